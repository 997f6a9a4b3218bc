import type { Page } from 'playwright-core'

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name })

/** Signs in at the desk; the page was opened at `/desk/sign-in`. */
export const signInAtDesk = async (page: Page, name: string, password: string): Promise<void> => {
  await page.getByLabel('Sign-in name').fill(name)
  await page.getByLabel('Password').fill(password)
  await page.keyboard.press('Enter')
  await page.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
}

/** Writes up a known customer's vehicle; gives the new order's number. */
export const writeUp = async (
  page: Page,
  of: { customer: string; plate: string; words: string },
): Promise<string> => {
  await page.getByRole('link', { name: 'Write up a complaint' }).first().click()
  await page.getByLabel('Customer’s name').fill(of.customer.slice(0, 8))
  await button(page, new RegExp(`${of.customer}.*on file`)).click()
  await button(page, new RegExp(`${of.plate}.*on file`)).click()
  await page.getByLabel('The complaint, in the customer’s own words').fill(of.words)
  await page.getByLabel('Flashes for about a minute, then stays on').check()
  await page.getByLabel(/I asked for each of these by name/).check()
  await page.getByLabel('Waits here').check()
  await page.getByLabel('Odometer').fill('50000')
  await page.getByLabel('Tamber Street', { exact: true }).check()
  await page.getByLabel(/charged with or without work/).check()
  await page.getByLabel('Inspecting every wheel and the vehicle').check()
  await page.getByLabel('A proof drive of up to 30 minutes').check()
  await page.getByLabel('The owner', { exact: true }).check()
  await button(page, 'Open the order').click()
  await page.getByRole('heading', { name: new RegExp(of.customer) }).waitFor()
  const head = (await page.locator('.order-head').textContent()) ?? ''
  return /T-\d+/.exec(head)?.[0] ?? ''
}

/** A code that enrolls one tablet, read off the desk's screen. */
export const enrollmentCode = async (page: Page): Promise<string> => {
  await page.getByRole('link', { name: 'Add a tablet' }).click()
  await button(page, /New code for Tamber Street/).click()
  return (await page.locator('.desk-code .exact').textContent()) ?? ''
}

/** Opens an order from the floor list. A row that moves while it is clicked is clicked again, as a person does. */
export const openOrder = async (page: Page, customer: string): Promise<void> => {
  const row = page
    .getByRole('complementary', { name: 'Floor list' })
    .getByRole('link', { name: new RegExp(customer) })
  const opened = page.getByRole('heading', { name: new RegExp(customer) })
  for (let clicks = 0; clicks < 2; clicks += 1) {
    await row.click()
    const isOpen = await opened.waitFor({ timeout: 10_000 }).then(
      () => true,
      () => false,
    )
    if (isOpen) return
  }
  await row.click()
  await opened.waitFor()
}

export const issueEstimate = async (page: Page): Promise<void> => {
  await button(page, 'Issue this estimate').click()
  await button(page, 'Send the customer a link').waitFor()
  // The button that was pressed is gone; the next Tab is at the head of the order and not at the top of the page.
  await page.waitForFunction(() => document.activeElement?.tagName === 'H1')
}

/** The address of the customer's page, shown once. */
export const customerLink = async (page: Page): Promise<string> => {
  await button(page, 'Send the customer a link').click()
  await button(page, 'Make the link').click()
  const address = page.getByLabel('Address')
  await address.waitFor()
  const link = await address.inputValue()
  await button(page, 'Close').click()
  return link
}

/** Notes the payment, seals the report and downloads it; gives the file's path. */
export const sealAndDownload = async (page: Page): Promise<string> => {
  await button(page, 'Take the payment').press('Enter')
  // What is typed takes the place of the amount, as after Tab.
  await page.waitForFunction(() => getSelection()?.toString() !== '')
  await page.getByRole('radio', { name: 'card', exact: true }).check()
  await button(page, 'Note the payment').click()
  await button(page, 'Yes, note it').click()
  await page.getByText('Nothing is owed.').waitFor()
  await button(page, 'Seal the report').click()
  const link = page.getByRole('link', { name: /Sealed report/ })
  await link.waitFor({ timeout: 60_000 })
  const [download] = await Promise.all([page.waitForEvent('download'), link.click()])
  return download.path()
}

export const handBack = async (page: Page, odometer: string): Promise<void> => {
  await button(page, 'Hand it back').press('Enter')
  // Not at the payments above it.
  await page.waitForFunction(() => document.activeElement?.closest('#hand-back') != null)
  await page.getByLabel('Odometer at hand-back').fill(odometer)
  await button(page, 'Hand back the vehicle').click()
  await page.getByText(/Handed back (at|on)/).waitFor()
}
