import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { customerLink, openOrder, signInAtDesk } from './support/desk.ts'
import { setStage } from './support/stage.ts'

const stage = setStage()

/** Presses a control by the keyboard alone. */
const press = async (page: Page, name: string | RegExp): Promise<void> => {
  await page.getByRole('button', { name }).first().focus()
  await page.keyboard.press('Enter')
}

/** Chooses a radio button by the keyboard alone. */
const choose = async (page: Page, group: string | RegExp, name: string | RegExp): Promise<void> => {
  await page.getByRole('group', { name: group }).getByRole('radio', { name }).first().focus()
  await page.keyboard.press('Space')
}

/** Withdraws the entry whose line begins so, because its value was wrong. */
const withdraw = async (page: Page, entry: RegExp): Promise<void> => {
  await press(page, entry)
  const dialog = page.getByRole('dialog')
  await dialog.getByLabel('Reason').selectOption({ label: 'Wrong value' })
  await dialog.getByRole('button', { name: /^Withdraw/ }).focus()
  await page.keyboard.press('Enter')
  await dialog.waitFor({ state: 'detached' })
}

const send = async (phone: Page): Promise<void> => {
  await phone.getByLabel('The owner of this vehicle').check()
  await phone.getByLabel('Your name').fill('W. Dunmore-Gray')
  await phone.getByRole('button', { name: 'Type your name instead' }).tap()
  await phone.getByLabel(/your full name, typed/).fill('W. Dunmore-Gray')
  await phone.getByLabel(/I agree to decide/).check()
  await phone.getByRole('button', { name: 'Send my answer' }).tap()
  await phone.getByText(/Thank you. Your answer is recorded/).waitFor()
}

const answer = async (phone: Page, word: string | RegExp): Promise<void> => {
  await phone.getByRole('radio', { name: word, exact: true }).first().check()
  await send(phone)
}

let desk: Page
beforeAll(async () => {
  desk = await stage().open('desk', '/desk/sign-in')
  await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
  await openOrder(desk, 'Dunmore-Gray')
}, 60_000)

describe('an answer on the customer’s phone', () => {
  let phone: Page
  const page = async () => ((await phone.locator('body').textContent()) ?? '').replaceAll(/\s+/g, ' ')
  beforeAll(async () => {
    const link = new URL(await customerLink(desk))
    phone = await stage().open('customer', link.pathname + link.hash)
    await phone.getByText(/If you say yes now, it will be ready by/).waitFor()
  }, 60_000)

  it('of Later is confirmed, and the page no longer speaks of a Yes now', async () => {
    await answer(phone, 'Later')
    const after = await page()
    expect(after).toContain('New sensor, right rear Later')
    expect(after).not.toContain('If you say yes now')
    expect(after).toContain('What you pay, with tax $52.00')
    await phone.getByRole('button', { name: 'Answer what you put off' }).waitFor()
  }, 60_000)

  it('becomes a Yes, and the Yes is taken back before any work on it', async () => {
    await phone.getByRole('button', { name: 'Answer what you put off' }).tap()
    await answer(phone, 'Yes')
    await phone.getByText('What you pay, with tax $203.40').waitFor()
    await phone.getByRole('button', { name: 'Take back a Yes' }).tap()
    await answer(phone, 'No, I no longer want it')
    await phone.getByText(/If you change your mind about a No, call the shop/).waitFor()
    expect(await page()).toContain('What you pay, with tax $52.00')
  }, 60_000)

  it('is at the desk at once: the No, its Yes, and the inspection that is owed', async () => {
    await desk.getByText(/No, the Yes was taken back before any work on it/).waitFor()
    const estimate = ((await desk.locator('#estimate').textContent()) ?? '').replaceAll(/\s+/g, ' ')
    expect(estimate).toContain('Inspection, as agreed $52.00')
    expect(estimate).not.toContain('Authorized, with tax')
  }, 60_000)
})

describe('what was written wrongly at the desk', () => {
  it('is withdrawn and written anew: the complaint, by keyboard', async () => {
    await withdraw(desk, /^Withdraw entry 2, Complaint/)
    const words = desk.getByLabel('The complaint, in the customer’s own words')
    await words.focus()
    await desk.keyboard.type('It blinks, then it stays on.')
    await choose(desk, /light/i, /Flashes for about a minute/)
    await press(desk, 'Record the complaint')
    await desk.getByText('“It blinks, then it stays on.”').waitFor()
    expect(await desk.locator('.mark-struck').first().textContent()).toContain('withdrawn')
  }, 60_000)

  it('is withdrawn and written anew: the specification sheet, by keyboard', async () => {
    await withdraw(desk, /^Withdraw entry 4, Specification sheet/)
    await press(desk, 'Use this sheet')
    await desk.getByRole('button', { name: 'Use this sheet' }).waitFor({ state: 'detached' })
    expect(await desk.locator('.margin').textContent()).toMatch(/Specification sheet.*Specification sheet/)
  }, 60_000)
})
