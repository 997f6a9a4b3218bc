import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { csvRows } from '../support/csv-rows.ts'
import { mailServer } from '../support/mail-server.ts'
import { readZip } from '../support/read-zip.ts'
import { violationsOn } from './support/accessible.ts'
import { button } from './support/bay.ts'
import { openOrder, signInAtDesk } from './support/desk.ts'
import { layoutFaultsOn } from './support/layout-faults.ts'
import { setStage } from './support/stage.ts'

const mail = await mailServer()
const stage = setStage(null, undefined, mail)
let page: Page

beforeAll(async () => {
  page = await stage().open('desk', '/desk/sign-in')
  await signInAtDesk(page, 'marguerite', 'brindle-falls-marguerite')
})

describe('an estimate by e-mail', () => {
  const inbox = 'wilhelmina@mail.example'
  /** Outside quiet hours, which depends on when this runs, the reports of others go out too. */
  const arrived = () =>
    mail.arrived.filter(({ to }) => to.some((one) => one === inbox || one.startsWith('w.dunmore')))
  const mailIt = async () => {
    const send = button(page, 'E-mail the estimate')
    await send.waitFor()
    // At night the customer is spared, unless they wait for it.
    const now = page.getByRole('checkbox', { name: 'Send it now; the customer waits for it' })
    if ((await now.count()) > 0) await now.check()
    await send.click()
  }
  const becomesOf = (words: RegExp) => page.locator('#messages').getByText(words).waitFor()

  it('that comes back is on the order, with what the mail server said and what to do', async () => {
    mail.becomes('no-such-mailbox')
    await openOrder(page, 'W. Dunmore-Gray')
    await mailIt()
    await becomesOf(
      /Estimate by e-mail: came back at .*there is no mailbox w\.dunmore\.gray@example\.com\. Correct the address on the customer’s card and send it again\..*No such mailbox here/,
    )
    // Nobody waits for an answer of a customer who has no link: it is in the head, wherever the sheet is scrolled to.
    await page
      .locator('.order-head')
      .getByText(/^The customer does not have it\. Estimate by e-mail: came back/)
      .waitFor()
    expect(arrived()).toEqual([])
    expect(await violationsOn(page)).toEqual([])
  })

  it('goes out once the address is corrected, and the order says to whom', async () => {
    mail.becomes('takes')
    await button(page, 'More').click()
    await button(page, 'Edit the customer').click()
    const dialog = page.getByRole('dialog', { name: 'Customer' })
    await dialog.getByLabel('E-mail', { exact: true }).fill(inbox)
    await dialog.getByRole('button', { name: 'Save' }).click()
    await dialog.waitFor({ state: 'detached' })
    await mailIt()
    await becomesOf(new RegExp(`Estimate by e-mail: handed over at .* to ${inbox}\\.`))
    expect(arrived()).toMatchObject([{ to: [inbox] }])
    await becomesOf(/Estimate by e-mail: came back at /)
    await page
      .locator('.order-head')
      .getByText(/^Waiting for the customer: link sent .*, not opened yet\./)
      .waitFor()
  })
})

describe('the end of the day', () => {
  it('a manager takes a payment, gives a part of it back once, and both are on the day and in its file', async () => {
    await openOrder(page, 'W. Dunmore-Gray')
    const number = (await page.title()).split(' ')[0] ?? ''
    await page.getByLabel('Amount received').fill('40')
    await page.getByRole('radio', { name: 'cash', exact: true }).check()
    await button(page, 'Note the payment').click()
    await button(page, 'Yes, note it').click()
    await button(page, 'Give money back').click()
    const dialog = page.getByRole('dialog', { name: 'Give money back' })
    await dialog.getByLabel('Amount given back').fill('15')
    await dialog.getByLabel('Why').fill('=Charged too much')
    expect(await violationsOn(page)).toEqual([])
    await button(page, 'Record that it was given back').dblclick()
    await dialog.waitFor({ state: 'detached' })
    await page.getByText(/Gave back \$15\.00 by cash, because: =Charged too much/).waitFor()
    expect(await page.getByText(/^Gave back/).count()).toBe(1)

    await page.getByRole('link', { name: 'The day', exact: true }).click()
    await page.getByRole('radio', { name: 'Tamber Street', exact: true }).check()
    await page.getByText(/given back \$15\.00/).waitFor()
    await page.getByText('−$15.00').waitFor()
    expect(await violationsOn(page)).toEqual([])
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'These payments as a file (CSV)' }).click(),
    ])
    const rows = csvRows<'order' | 'amount' | 'method'>(await readFile(await download.path(), 'utf8'))
    expect(rows.filter(({ order }) => order === number)).toMatchObject([
      { amount: '40.00', method: 'cash' },
      { amount: '-15.00', method: 'cash' },
    ])
  })

  it('the owner takes the orders of the day away as a file', async () => {
    await page.goto('/desk/shop/files')
    await page.getByRole('radio', { name: /^Orders/ }).check()
    expect(await violationsOn(page)).toEqual([])
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'Download orders as a file (CSV)' }).click(),
    ])
    const rows = csvRows<'order' | 'customer'>(await readFile(await download.path(), 'utf8'))
    expect(rows.map(({ customer }) => customer)).toContain('W. Dunmore-Gray')
  })

  it('a known customer is asked at the write-up what they agree to, and gets a copy of all that is kept of them', async () => {
    await page.getByRole('link', { name: 'Write up a complaint' }).first().click()
    await page.getByLabel('Customer’s name').fill('W. Dunmore')
    await button(page, /^W\. Dunmore-Gray.*on file/).click()
    await page.getByText(/^Ask the customer\. .*Never asked by purpose/).waitFor()
    await button(page, 'What they agree to').press('Enter')
    await page.getByRole('group', { name: 'May be called about' }).getByLabel('work put off').click()
    await page.getByRole('status').getByText('Not asked about all of it yet.').waitFor()
    await button(page, 'I asked: it is as shown').press('Enter')
    await page
      .getByRole('status')
      .getByText(/^Asked [A-Z]/)
      .waitFor()
    await page.getByText('Ask the customer.').waitFor({ state: 'detached' })
    expect(await violationsOn(page)).toEqual([])

    const { customers } = (await stage().desk.get('/api/customers?q=W.%20Dunmore')) as {
      customers: { customerId: string }[]
    }
    await page.goto(`/desk/customers/${customers[0]?.customerId}`)
    const about = page.getByRole('group', { name: 'May be called about' })
    await expect.poll(() => about.getByLabel('work put off').isChecked()).toBe(true)
    expect(await violationsOn(page)).toEqual([])
    const saved = page.waitForEvent('download', (file) => file.suggestedFilename().endsWith('.zip'))
    await button(page, 'Write a copy').click()
    const copy = readZip(await readFile(await (await saved).path()))
    expect(String(copy.get('data.json'))).toContain('W. Dunmore-Gray')
    await page.getByText(/^A copy was made .*, by Marguerite Ashby-Bell\.$/).waitFor()
  })

  it('an order gets a legal hold from an owner, who sees it there and lifts it', async () => {
    await openOrder(page, 'W. Dunmore-Gray')
    await button(page, 'More').click()
    await button(page, 'Legal hold').click()
    await page.getByLabel('Reason for a hold').fill('A claim')
    await button(page, 'Place a legal hold').click()
    await page.getByText(/^Order T-2602: A claim/).waitFor()
    expect(await violationsOn(page)).toEqual([])
    await button(page, 'Lift the hold').click()
    await page.getByText(/Lifted by Marguerite Ashby-Bell/).waitFor()
    await button(page, 'Close').click()
    await button(page, 'More').click()
  })

  it('what is printed of an order is on US Letter: four wheel tags on one page, and the link with its code on one', async () => {
    const pages = async () =>
      (await page.pdf({ preferCSSPageSize: true })).toString('latin1').match(/\/Type\s*\/Page\b/g)?.length
    await openOrder(page, 'W. Dunmore-Gray')
    await button(page, 'Link or code to print').click()
    await button(page, 'Make the link').click()
    await page.getByLabel('Address').waitFor()
    await page.getByRole('img', { name: /The link, for a phone/ }).waitFor()
    expect(await pages()).toBe(1)
    await button(page, 'Close').click()
    await button(page, 'More').click()
    await page.getByRole('link', { name: 'Wheel tags to print' }).click()
    await page.getByRole('region', { name: 'Tag LR' }).waitFor()
    expect(await page.getByRole('region', { name: 'Tag LF' }).textContent()).toMatch(
      /T-2602.*LF.*Wheel torque: \d+.*(lbf·ft|N·m)/s,
    )
    expect(await violationsOn(page)).toEqual([])
    expect(await pages()).toBe(1)
    await page.goto('/desk/print/floor')
    await page.getByRole('heading', { name: /^Floor list/ }).waitFor()
    expect(await violationsOn(page)).toEqual([])
  })

  it('the wall has the floor without names, and says when it has no connection', async () => {
    await page.setViewportSize({ width: 1_920, height: 1_080 })
    await page.goto('/desk/wall')
    await page
      .getByText(/^T-26\d\d · …/)
      .first()
      .waitFor()
    expect(await violationsOn(page)).toEqual([])
    expect(await page.getByRole('main').textContent()).not.toMatch(/Dunmore|Lindqvist|Castellane/)
    const size = await page
      .locator('.wall li span')
      .first()
      .evaluate((line) => Number.parseFloat(getComputedStyle(line).fontSize))
    // A capital of this typeface is 0.668 of its size (its OS/2 table); 25 mm on a screen of 40 in, whose 1,920 dots are 886 mm wide.
    expect((size * 0.668 * 886) / 1_920).toBeGreaterThanOrEqual(25)
    // In the dark, too, and every vehicle of the page is whole on it.
    await page.emulateMedia({ colorScheme: 'dark' })
    expect(await violationsOn(page)).toEqual([])
    expect(await layoutFaultsOn(page, '.wall-cut')).toEqual([])
    const below = await page
      .locator('.wall li')
      .evaluateAll((rows) => rows.map((row) => row.getBoundingClientRect().bottom))
    expect(Math.max(...below)).toBeLessThanOrEqual(1_080)
    await page.emulateMedia({ colorScheme: 'light' })
    await button(page, 'Full screen').click()
    await button(page, 'Full screen').waitFor({ state: 'detached' })
    await page.evaluate(() => document.exitFullscreen())
    await button(page, 'Full screen').waitFor()
    await page.context().setOffline(true)
    await page.getByText(/^No connection\. As of \d/).waitFor()
    await page.context().setOffline(false)
    await page.getByText(/^No connection/).waitFor({ state: 'detached' })
  })
})

describe('people’s data', () => {
  it('have times that an owner reads, beside what goes next, holds and erasures', async () => {
    await page.goto('/desk/shop/privacy')
    await page.getByText('Nothing is due within 30 days.').waitFor()
    await page.getByText('Nobody’s data were erased yet.').waitFor()
    await page.getByLabel('A write-up that was begun and left is thrown away after').waitFor()
    expect(await violationsOn(page)).toEqual([])
  })
})
