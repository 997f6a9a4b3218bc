import type { Page } from 'playwright-core'

/** Says Yes to everything and signs with a finger, on the customer's own phone. */
export const decideAndSign = async (page: Page, name: string): Promise<void> => {
  await page.getByRole('radio', { name: 'Yes', exact: true }).first().waitFor()
  for (const yes of await page.getByRole('radio', { name: 'Yes', exact: true }).all()) await yes.check()
  await signAs(page, name)
}

/** Signs what was answered and sends it. */
export const signAs = async (page: Page, name: string): Promise<void> => {
  await page.getByLabel('The owner of this vehicle').check()
  await page.getByLabel('Your name').fill(name)
  await draw(page)
  await page.getByLabel(/I agree to decide/).check()
  await page.getByRole('button', { name: 'Send my answer' }).click()
  await page.getByText(/Thank you. Your answer is recorded/).waitFor()
}

const draw = async (page: Page): Promise<void> => {
  const pad = page.getByRole('img', { name: 'Your signature' })
  await pad.scrollIntoViewIfNeeded()
  const box = await pad.boundingBox()
  if (box === null) throw new Error('no field to sign in')
  await page.mouse.move(box.x + 30, box.y + box.height / 2)
  await page.mouse.down()
  for (let step = 1; step <= 12; step += 1)
    await page.mouse.move(box.x + 30 + step * 20, box.y + box.height / 2 + (step % 2 === 0 ? 18 : -18))
  await page.mouse.up()
}
