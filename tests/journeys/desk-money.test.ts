import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { openOrder, signInAtDesk } from './support/desk.ts'
import { setStage } from './support/stage.ts'

const stage = setStage()

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name })

/** Presses a control by the keyboard alone. */
const press = async (page: Page, name: string | RegExp): Promise<void> => {
  await button(page, name).first().focus()
  await page.keyboard.press('Enter')
}

/** Chooses a radio button by the keyboard alone. */
const choose = async (page: Page, group: string | RegExp, name: string): Promise<void> => {
  await page.getByRole('group', { name: group }).getByRole('radio', { name, exact: true }).focus()
  await page.keyboard.press('Enter')
}

const type = async (page: Page, label: string, text: string): Promise<void> => {
  const field = page.getByLabel(label)
  await field.focus()
  await page.keyboard.press('ControlOrMeta+a')
  await page.keyboard.type(text)
}

const byTelephone = async (page: Page, group: RegExp, answer: string, said: string): Promise<void> => {
  await press(page, 'Decide by telephone')
  await choose(page, group, answer)
  await choose(page, 'Who decides?', 'The owner')
  await type(page, 'Number called', '555 0100 200')
  await type(page, 'The answer, in their words', said)
  await press(page, 'Record the decision')
  await button(page, 'Record the decision').waitFor({ state: 'detached' })
}

describe('an estimate after an answer, at the desk by keyboard', () => {
  let page: Page

  beforeAll(async () => {
    page = await stage().open('desk', '/desk/sign-in')
    await signInAtDesk(page, 'ottoline', 'brindle-falls-ottoline')
    await openOrder(page, 'Dunmore-Gray')
  }, 60_000)

  it('is No by telephone, and Yes when the customer calls back', async () => {
    await byTelephone(page, /New sensor, right rear/, 'No', 'No, not today.')
    await page
      .getByText(/Check all pressures by hand every week/)
      .first()
      .waitFor()
    await byTelephone(page, /New sensor, right rear/, 'Yes, after a No', 'Yes, do it after all.')
    await page.getByText('Authorized, with tax').waitFor()
    expect(await page.locator('#estimate').textContent()).toContain('$151.40 · Yes')
  }, 60_000)

  it('is paid with an amount, a kind and a confirmation, and corrected by an entry of its own', async () => {
    await type(page, 'Amount received', '200')
    await choose(page, 'Paid by', 'cash')
    await press(page, 'Note the payment')
    await page.getByText('$200.00 by cash; $203.40 is owed. Is this right?').waitFor()
    await page.keyboard.press('Enter')
    await page.getByText('Owed and not yet paid').waitFor()
    await press(page, 'Correct this payment')
    await type(page, 'Amount really received', '203.40')
    await choose(page, 'Really paid by', 'card')
    await type(page, 'Why', 'Paid by card, the rest too.')
    await press(page, 'Record the correction')
    await page.getByText('Nothing is owed.').waitFor()
    const report = await page.locator('#report').textContent()
    expect(report).toContain('Paid $203.40 by card')
    expect(report).toContain('Noted before as $200.00 by cash; corrected at')
  }, 60_000)

  it('has its promise and odometer written again, and refuses a figure of nines', async () => {
    await press(page, 'Edit the stay')
    await type(page, 'Odometer as it came', '999999')
    await page
      .getByText(/what a display shows at its end/)
      .first()
      .waitFor()
    await type(page, 'Odometer as it came', '88150')
    await choose(page, 'The customer', 'Leaves the vehicle')
    await press(page, 'Save')
    await page.getByText(/88,150 mi/).waitFor()
  }, 60_000)
})
