import { english } from '@bayledger/wording/en/english'
import { spanish } from '@bayledger/wording/es/spanish'
import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { saidByCode } from '../../packages/wording/test-support/said-by-code.ts'
import { freeLinnet, freeMoor, freeTarn } from '../support/free-vehicles.ts'
import { writeOrderInFlight } from '../support/order-in-flight.ts'
import { runOutsideTool } from '../support/run-outside-tool.ts'
import { openDesk } from './support/begin.ts'
import { customerLink, openOrder } from './support/desk.ts'
import { setStage } from './support/stage.ts'

/** Two orders of which the estimate waits for its answer: the demo's own, and the same for another customer. */
const [byTelephoneCustomer, byPhoneCustomer] = ['W. Dunmore-Gray', freeTarn.customer]
/** Two more who read Spanish: one decides, and the work for the other is done and not sealed yet. */
const [inSpanish, doneInSpanish] = [freeMoor.customer, freeLinnet.customer]
const stage = setStage(null, async ({ serviceUrl }) => {
  await writeOrderInFlight(serviceUrl, { ...freeTarn, number: 'T-2602' }, () => false)
  await writeOrderInFlight(serviceUrl, { ...freeMoor, number: 'T-2602' }, () => false)
  await writeOrderInFlight(
    serviceUrl,
    { ...freeLinnet, number: 'T-2605' },
    ({ draft }) => draft.kind === 'report.sealed',
  )
})

let desk: Page
beforeAll(async () => {
  desk = await openDesk(stage())
})

/** Presses a control by the keyboard alone. */
const press = async (page: Page, name: string | RegExp): Promise<void> => {
  await page.getByRole('button', { name }).first().focus()
  await page.keyboard.press('Enter')
}

/** Chooses a radio button by the keyboard alone. */
const choose = async (
  page: Page,
  group: string | RegExp,
  name: string | RegExp,
  key: 'Enter' | 'Space' = 'Enter',
): Promise<void> => {
  await page.getByRole('group', { name: group }).getByRole('radio', { name, exact: true }).first().focus()
  await page.keyboard.press(key)
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
  await page.getByRole('button', { name: 'Record the decision' }).waitFor({ state: 'detached' })
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
  await phone.getByLabel('Your name').fill(byPhoneCustomer)
  await phone.getByRole('button', { name: 'Type your name instead' }).tap()
  await phone.getByLabel(/your full name, typed/).fill(byPhoneCustomer)
  await phone.getByLabel(/I agree to decide/).check()
  await phone.getByRole('button', { name: 'Send my answer' }).tap()
  await phone.getByText(/Thank you. Your answer is recorded/).waitFor()
}

const answer = async (phone: Page, word: string | RegExp): Promise<void> => {
  await phone.getByRole('radio', { name: word, exact: true }).first().check()
  await send(phone)
}

describe('an estimate after an answer, at the desk by keyboard', () => {
  beforeAll(() => openOrder(desk, byTelephoneCustomer))

  it('is No by telephone, and Yes when the customer calls back', async () => {
    await byTelephone(desk, /New sensor, right rear/, 'No', 'No, not today.')
    await desk
      .getByText(/Check the air in all tires with a gauge every week/)
      .first()
      .waitFor()
    await byTelephone(desk, /New sensor, right rear/, 'Yes, after a No', 'Yes, do it after all.')
    await desk.getByText('Authorized, with tax').waitFor()
    expect(await desk.locator('#estimate').textContent()).toContain('$151.40 · Yes')
  })

  it('is paid with an amount, a kind and a confirmation, and corrected by an entry of its own', async () => {
    await type(desk, 'Amount received', '200')
    await choose(desk, 'Paid by', 'cash')
    await press(desk, 'Note the payment')
    await desk.getByText('$200.00 by cash; $203.40 is owed. Is this right?').waitFor()
    await desk.keyboard.press('Enter')
    await desk.getByText('Owed and not yet paid').waitFor()
    await press(desk, 'Correct this payment')
    await type(desk, 'Amount really received', '203.40')
    await choose(desk, 'Really paid by', 'card')
    await type(desk, 'Why', 'Paid by card, the rest too.')
    await press(desk, 'Record the correction')
    await desk.getByText('Nothing is owed.').waitFor()
    // As it closes it gives the focus back, which must not meet the next key.
    await desk.getByRole('dialog').waitFor({ state: 'detached' })
    const report = await desk.locator('#report').textContent()
    expect(report).toContain('Paid $203.40 by card')
    expect(report).toMatch(/Noted before as \$200\.00 by cash; corrected (at|on)/)
  })

  it('has its promise and odometer written again, and refuses a figure of nines', async () => {
    await press(desk, 'More')
    await press(desk, 'Edit the stay')
    await type(desk, 'Odometer as it came', '999999')
    await desk
      .getByText(/what a display shows at its end/)
      .first()
      .waitFor()
    await type(desk, 'Odometer as it came', '88150')
    await choose(desk, 'The customer', 'Leaves the vehicle')
    await press(desk, 'Save')
    await desk.getByText(/88,150 mi/).waitFor()
  })
})

describe('an answer on the customer’s phone', () => {
  let phone: Page
  const page = async () => ((await phone.locator('body').textContent()) ?? '').replaceAll(/\s+/g, ' ')
  beforeAll(async () => {
    await openOrder(desk, byPhoneCustomer)
    const link = new URL(await customerLink(desk))
    phone = await stage().open('customer', link.pathname + link.hash)
    await phone.getByText(/If you say yes now, it will be ready by/).waitFor()
    expect(new URL(phone.url()).hash, 'the secret of the link has left the address').toBe('')
  })

  it('is asked for on the first screen; the proof at its wheel is one touch away', async () => {
    const yes = await phone.getByRole('radio', { name: 'Yes', exact: true }).first().boundingBox()
    expect((yes?.y ?? Number.POSITIVE_INFINITY) + (yes?.height ?? 0)).toBeLessThanOrEqual(844)
    const proof = phone.getByText('Right rear sensor: silent at 3 tries, while others answered')
    expect(await proof.isVisible()).toBe(false)
    await phone.getByText('See what we measured').tap()
    await proof.waitFor()
    await phone.locator('.plan-svg').getByText('no answer, 3 tests').waitFor()
  })

  it('of Not today is confirmed, and the page no longer speaks of a Yes now', async () => {
    await answer(phone, 'Not today')
    const after = await page()
    expect(after).toContain('New sensor, right rear Not today')
    expect(after).not.toContain('If you say yes now')
    expect(after).toContain('What you pay, with tax $52.00')
    await phone.getByRole('button', { name: 'Answer what you put off' }).waitFor()
  })

  it('becomes a Yes, and the Yes is taken back before any work on it', async () => {
    await phone.getByRole('button', { name: 'Answer what you put off' }).tap()
    await answer(phone, 'Yes')
    await phone.getByText('What you pay, with tax $203.40').waitFor()
    await phone.getByRole('button', { name: 'Take back a Yes' }).tap()
    await answer(phone, 'No, I no longer want it')
    await phone.getByText(/If you change your mind about a No, call the shop/).waitFor()
    expect(await page()).toContain('What you pay, with tax $52.00')
  })

  it('is at the desk at once: the No, its Yes, and the inspection that is owed', async () => {
    await desk.getByText(/No, the Yes was taken back before any work on it/).waitFor()
    const estimate = ((await desk.locator('#estimate').textContent()) ?? '').replaceAll(/\s+/g, ' ')
    expect(estimate).toContain('Inspection, as agreed $52.00')
    expect(estimate).not.toContain('Authorized, with tax')
  })
})

describe('what was written wrongly at the desk', () => {
  it('is withdrawn and written anew: the complaint, by keyboard', async () => {
    await withdraw(desk, /^Withdraw entry 2, Complaint/)
    const words = desk.getByLabel('The complaint, in the customer’s own words')
    await words.focus()
    await desk.keyboard.type('It blinks, then it stays on.')
    await choose(desk, /light/i, /Flashes for about a minute/, 'Space')
    await press(desk, 'Record the complaint')
    await desk.getByText('“It blinks, then it stays on.”').waitFor()
    expect(await desk.locator('.mark-struck').first().textContent()).toContain('withdrawn')
  })

  it('is withdrawn and written anew: the specification sheet, by keyboard', async () => {
    await withdraw(desk, /^Withdraw entry 4, Specification sheet/)
    await press(desk, 'Use this sheet')
    await desk.getByRole('button', { name: 'Use this sheet' }).waitFor({ state: 'detached' })
    expect(await desk.locator('.margin').textContent()).toMatch(/Specification sheet.*Specification sheet/)
  })
})

/** What is wider than its place on a phone: words that are cut off, or a page that scrolls sideways. */
const tooWide = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [document.documentElement, ...document.querySelectorAll('#root *:not(.for-screen-readers, svg *)')]
      .filter((one) => one.clientWidth > 1 && one.scrollWidth > one.clientWidth + 1)
      .map((one) => one.textContent ?? ''),
  )

describe('a customer who reads Spanish', () => {
  let phone: Page
  const says = spanish.customerPage
  const speaks = (language: string) => phone.locator(`html[lang="${language}"]`).waitFor()
  const chooseSpanish = async (customer: string) => {
    await openOrder(desk, customer)
    await press(desk, 'More')
    await press(desk, 'Edit the customer')
    await choose(desk, 'Page, estimate and report in', 'Español')
    await press(desk, 'Save')
    await desk.getByRole('dialog').waitFor({ state: 'detached' })
    await desk
      .locator('.order-head')
      .getByText(/Español/)
      .waitFor()
  }

  it('has it on the card; the advisor reads it out with the English beside it', async () => {
    await chooseSpanish(inSpanish)
    await press(desk, 'Decide by telephone')
    await choose(desk, /New sensor, right rear/, 'No')
    const dialog = desk.getByRole('dialog')
    await dialog.getByText(/Usted dice que sí a: nada de esto/).waitFor()
    await dialog.getByText(/In English: For your/).waitFor()
    await dialog.getByText(spanish.customerCautions['CT-01'][2]).waitFor()
    await press(desk, 'Close')
  })

  it('opens the page in it, on a phone, with no word of English and nothing cut off', async () => {
    const link = new URL(await customerLink(desk))
    phone = await stage().open('customer', link.pathname + link.hash)
    await phone.getByRole('heading', { name: spanish.customerEstimate.title }).waitFor()
    await speaks('es-US')
    await phone.getByRole('radio', { name: 'No', exact: true }).first().tap()
    await phone
      .getByText(/Mida con un medidor el aire/)
      .first()
      .waitFor()
    for (const prices of await phone.getByText(spanish.customerEstimate.question.eachPrice).all())
      await prices.tap()
    const text = ((await phone.locator('#root').textContent()) ?? '').replaceAll(/\s+/g, ' ')
    const codes = saidByCode(spanish)
    const words = new Set(Object.values(codes))
    const stillEnglish = Object.entries(saidByCode(english)).filter(
      ([code, said]) => Object.hasOwn(codes, code) && said.includes(' ') && !words.has(said),
    )
    expect(stillEnglish.filter(([, said]) => text.includes(said))).toEqual([])
    expect(await tooWide(phone)).toEqual([])
  })

  it('switches to English and back by a touch; a reload and the answers keep', async () => {
    await phone.getByRole('button', { name: 'English' }).tap()
    await phone.getByRole('heading', { name: 'What it costs' }).waitFor()
    await speaks('en-US')
    expect(await phone.getByRole('radio', { name: 'No', exact: true }).first().isChecked()).toBe(true)
    await phone.reload()
    await phone.getByRole('heading', { name: 'What it costs' }).waitFor()
    await expect
      .poll(() => phone.getByRole('radio', { name: 'No', exact: true }).first().isChecked())
      .toBe(true)
    await phone.getByRole('button', { name: 'Español' }).tap()
    await phone.getByRole('heading', { name: says.titles.canDrive }).waitFor()
    await phone.reload()
    await phone.getByRole('heading', { name: says.titles.canDrive }).waitFor()
    await speaks('es-US')
  })

  it('decides and signs, and the desk has the answer with its language', async () => {
    const { sign, answered } = spanish.customerEstimate
    await phone.getByRole('radio', { name: 'Sí', exact: true }).first().tap()
    await phone.getByLabel(sign.relations.owner).tap()
    await phone.getByLabel(sign.name).fill(inSpanish)
    await phone.getByRole('button', { name: spanish.controls.signature.type }).tap()
    await phone.getByLabel(/su nombre completo, escrito/).fill(inSpanish)
    await phone.getByLabel(sign.electronic.label).tap()
    await phone.getByRole('button', { name: sign.send }).tap()
    await phone.getByText(answered.recorded).waitFor()
    expect(await tooWide(phone)).toEqual([])
    await desk.getByText('Authorized, with tax').waitFor()
    const entries = await stage().desk.entriesOf(new URL(desk.url()).pathname.split('/').at(-1) ?? '')
    expect(entries.find(({ kind }) => kind === 'estimate.decided')?.payload).toMatchObject({ language: 'es' })
  })

  it('is given the report in it', async () => {
    await chooseSpanish(doneInSpanish)
    await press(desk, 'Seal the report')
    const sealed = desk.getByRole('link', { name: /Sealed report/ })
    await sealed.waitFor()
    const [download] = await Promise.all([desk.waitForEvent('download'), sealed.click()])
    const file = await download.path()
    await press(desk, 'Seal an addendum')
    await desk.getByText(/says all of it already. Nothing was sealed/).waitFor()
    expect(await sealed.count()).toBe(1)
    const { output } = runOutsideTool('pdftotext', ['-raw', '-l', '1', file, '-'])
    expect(output).toContain('¿Puedo manejarlo?')
    expect(output).toContain('Lo que hicimos')
    await phone.goto('/check')
    await phone.getByText(spanish.reportCheck.choose).waitFor()
    await phone.locator('input[type=file]').setInputFiles(file)
    await phone.getByText(spanish.reportCheck.verdicts.genuine).waitFor()
    await phone.getByText(/byte por byte como lo selló este taller/).waitFor()
  })
})
