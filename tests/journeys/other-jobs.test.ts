import type { PayloadOf } from '@bayledger/ledger/registry'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { tabletId } from '../../prisma/seeds/demo/places.ts'
import { freeLinnet, freeMoor, freeTarn } from '../support/free-vehicles.ts'
import { type OrderWriter, openOrderWriter } from '../support/order-in-flight.ts'
import { runOutsideTool } from '../support/run-outside-tool.ts'
import { button, greta, heading, ines, leaves, shows, signIn, type } from './support/bay.ts'
import { workFigures, workThrough } from './support/bay-steps.ts'
import { openBay, openDesk } from './support/begin.ts'
import { signAs } from './support/customer.ts'
import { issueEstimate, openOrder, sealAndDownload } from './support/desk.ts'
import { setStage } from './support/stage.ts'
import { handOf, slowNetwork, tap } from './support/touch.ts'

/** Two of four aged sensors are silent: the estimate waits for the customer's answer. */
const ofFour = { ...freeMoor, number: 'T-2603', orderId: '' }
/** One silent sensor; the findings are still to be confirmed, and there will be sealant in the tire. */
const sealed = { ...freeTarn, number: 'T-2602', orderId: '' }
/** A bulge in a sidewall: the customer has declined a new tire, and the refusal is still to be recorded. */
const onSpare = { ...freeLinnet, number: 'T-2614' }

let writer: OrderWriter
const minutesBehind = 30
const browser = setStage(minutesBehind, async ({ serviceUrl }) => {
  writer = await openOrderWriter(serviceUrl)
  ofFour.orderId = await writer.write(ofFour, ({ draft }) => draft.kind === 'estimate.shown')
  sealed.orderId = await writer.write(sealed, ({ draft }) => draft.kind === 'diagnosis.confirmed')
  await writer.write(onSpare, ({ draft }) => draft.kind === 'refusal.recorded')
})
afterAll(() => writer.close())

let desk: Page
let bay: Page
beforeAll(async () => {
  desk = await openDesk(browser())
  bay = await openBay(browser())
})

/** The customer says Yes to one offer on the phone, and No to the others. */
const agreeTo = async (orderId: string, customer: string, offer: RegExp): Promise<void> => {
  const phone = await browser().open('customer', await browser().desk.customerLink(orderId))
  await phone.getByRole('radio', { name: 'Yes', exact: true }).first().waitFor()
  for (const question of await phone.getByRole('group', { name: /Do you want this\?$/ }).all())
    await question.getByRole('radio', { name: 'No', exact: true }).check()
  await phone.getByRole('group', { name: offer }).getByRole('radio', { name: 'Yes', exact: true }).check()
  await signAs(phone, customer)
  await phone.close()
}

/** The payloads of one kind in the ledger of an order; of the one with the sealant where no other is named. */
const written = async (kind: string, orderId = sealed.orderId): Promise<unknown[]> =>
  (await browser().desk.entriesOf(orderId)).flatMap((entry) => (entry.kind === kind ? [entry.payload] : []))

const figures = {
  ...workFigures,
  partNumber: 'TS-DUAL-C',
  newIds: {
    'left front': '5D00AA01',
    'right front': '5D00AA02',
    'right rear': '5D00AA03',
    'left rear': '5D00AA04',
  },
  odometerOut: '133703',
  odometerIn: '133717',
}

describe('a set of four sensors', () => {
  it('is one lift, one walk with the wrench and one drive, and its touches from the wheels’ way back are counted', async () => {
    onTestFailed(() => browser().picture('out'))
    await agreeTo(ofFour.orderId, ofFour.customer, /^New sensors in all wheels/)
    await expect.poll(() => written('plan.issued', ofFour.orderId)).toHaveLength(1)
    const [issued] = await written('plan.issued', ofFour.orderId)
    const { steps } = (issued as PayloadOf<'plan.issued'>).plan
    expect(steps).toHaveLength(85)
    expect(steps.filter(({ code }) => code === 'lift-vehicle')).toHaveLength(1)
    // What is done to each tire is written on another tablet: one such wheel by touch is in the whole job.
    await writer.workOn(ofFour.orderId, ({ closedBy }) => closedBy === 'wheel.mounted', {
      person: people.ines,
      deviceId: tabletId(4),
      minutesBehind,
    })
    await tap(bay.getByRole('link', { name: new RegExp(ofFour.customer) }))
    await leaves(bay, 'My vehicles')
    const hand = await handOf(bay)
    const before = hand.touches()
    const done = await workThrough(bay, figures)
    const touches = hand.touches() - before
    const shown = done.filter((title) => !title.startsWith('Which '))
    const count = (step: RegExp) => done.filter((title) => step.test(title)).length
    expect(shown).toHaveLength(36)
    expect(count(/^Wheel on/)).toBe(4)
    expect(count(/^(Round at|Once more)/)).toBe(12)
    expect(count(/^Lift/)).toBe(0)
    expect(count(/^Lower it onto its wheels/)).toBe(1)
    expect(count(/^Second person checks/)).toBe(4)
    expect(count(/^Proof drive/)).toBe(1)
    expect(touches, 'touches of a set of four, from the wheels’ way back').toBeLessThanOrEqual(150)
  })
})

/** The ID that other jobs program is taken by the set of four before. */
const sealedFigures = { ...workFigures, newId: '5D00AA09' }

describe('sealant in a tire', () => {
  it('is seen, and brings a purge before the tire is opened, with the server 700 ms away', async () => {
    onTestFailed(() => browser().picture('out'))
    await bay.goto(`/bay/orders/${sealed.orderId}`)
    await slowNetwork(bay, 700)
    await shows(bay, /readings say/)
    await tap(button(bay, /^right rear/i))
    await tap(button(bay, 'Tire', true))
    await tap(button(bay, 'Size, date code, more'))
    for (const [place, depth] of [
      ['Tread on the inner side', '3.0'],
      ['Tread in the middle', '6.0'],
      ['Tread on the outer side', '6.5'],
    ] as const) {
      await tap(bay.locator('.row-cell', { hasText: place }))
      await type(bay, depth)
    }
    await tap(bay.locator('.row-cell', { hasText: 'Sealant' }))
    await tap(button(bay, 'Sealant seen'))
    await tap(button(bay, 'Record what was looked at'))
    await shows(bay, /readings say/)
    await tap(button(bay, /confirm the findings/))
    await shows(bay, 'Nothing for the bay now')
    await openOrder(desk, sealed.customer)
    // The arrival folds as soon as the desk has heard of the confirmed findings, and opens by its title.
    await desk.locator('#as-received .section-fold').click()
    await desk.getByText(/^The right rear tire has 3\/32, 6\/32 and 6\.5\/32 in .*inner shoulder/).waitFor()
    await issueEstimate(desk)
    await agreeTo(sealed.orderId, sealed.customer, /^New sensor, right rear/)
    await leaves(bay, 'Nothing for the bay now')

    const purge = /^Outdoors: purge the sealant gas/
    expect(await workThrough(bay, sealedFigures, purge)).toContainEqual(
      expect.stringMatching(/^Take the wheel off/),
    )
    await tap(button(bay, 'Outdoors'))
    await tap(button(bay, 'Four times'))
    await tap(button(bay, /^Go on/))
    // Whoever purges is not the one who knows of it, and somebody else's digits are no agreement.
    expect(await button(bay, ines.name, true).count()).toBe(0)
    await tap(button(bay, greta.name, true))
    await type(bay, ines.pin)
    await bay.getByText('The PIN is wrong').first().waitFor()
    expect(await written('sealant.purged')).toEqual([])
    await type(bay, greta.pin)
    await expect
      .poll(() => written('sealant.purged'))
      .toMatchObject([{ wheel: 'RR', outdoors: true, times: 4, aware: { proof: { how: 'pin' } } }])
  })

  it('takes a step back by Undo, and keeps a half-filled one while the person is changed', async () => {
    onTestFailed(() => browser().picture('out'))
    await workThrough(bay, sealedFigures, /^Let the air off/)
    // The tire stays shut until the customer knows of the danger, and the bay is told who opens it.
    await bay
      .locator('.bay-step')
      .getByText(/The desk tells the customer and notes it/)
      .waitFor()
    await desk.getByLabel('The customer’s answer').fill('Go on, and thank you for telling me.')
    await desk.getByRole('button', { name: 'Told in person' }).click()
    await tap(button(bay, 'Done', true))
    await tap(button(bay, /^Undo RR · Let the air off/))
    await shows(bay, /^Let the air off/)
    await expect.poll(async () => (await written('entry.struck')).at(-1)).toMatchObject({ reason: 'undone' })
    await workThrough(bay, sealedFigures, /^Wheel on/)
    await tap(button(bay, /^Right and clean/))
    for (const person of [greta, ines]) {
      await tap(button(bay, /Change person/))
      await signIn(bay, person)
    }
    await shows(bay, /^Wheel on/)
    expect(await bay.locator('.row-cell').first().textContent()).toContain('Right and clean')
    await tap(bay.locator('.row-cell').first())
  })
})

describe('a vehicle that leaves on its sound spare', () => {
  it('is refused a new tire before a witness, and the spare becomes the work of the bay', async () => {
    onTestFailed(() => browser().picture('out'))
    await openOrder(desk, onSpare.customer)
    await button(desk, /refuses/)
      .first()
      .click()
    await desk.getByRole('radio', { name: 'On a sound spare' }).check()
    await desk.getByLabel('Will not sign: who witnesses it?').selectOption({ label: people.devin.name })
    await desk.getByLabel(/^PIN of/).fill(people.devin.pin)
    await button(desk, 'Record the refusal').click()
    await button(desk, 'Record the refusal').waitFor({ state: 'detached' })

    await slowNetwork(bay, 0)
    await bay.goto('/bay')
    await tap(button(bay, `Take it: ${onSpare.plate}`))
    await leaves(bay, 'My vehicles')
    await shows(bay, /^Take the spare out, see that it is sound/)
    await bay.getByLabel('What was found or used').fill('sound, no limits printed')
    await tap(button(bay, 'Done: record'))
    await leaves(bay, 'Take the spare out, see that it is sound: spare')
    const before = await workThrough(bay, workFigures, /^Wheel on/)
    // The damaged wheel cannot go back where it was: the spare is the first that is offered.
    await tap(button(bay, /^Right and clean/))
    await tap(button(bay, /^By hand/))
    const step = (await heading(bay).textContent()) ?? ''
    await tap(button(bay, 'SP', true).last())
    await leaves(bay, step)
    const done = [...before, ...(await workThrough(bay, workFigures))]
    expect(done.filter((title) => /^Second person checks/.test(title))).toHaveLength(1)
    expect(
      done.some((title) => /^(Let the air off|Look inside|Draw the sensor|Proof drive)/.test(title)),
    ).toBe(false)
  })

  it('goes back to its owner on it, and the report says so', async () => {
    onTestFailed(() => browser().picture('out'))
    await openOrder(desk, onSpare.customer)
    const file = await sealAndDownload(desk)
    const text = runOutsideTool('pdftotext', ['-layout', file, '-']).output.replace(/\s+/g, ' ')
    expect(text).toMatch(/It leaves on its spare/)
    expect(text).toMatch(/[Dd]o not drive/)
    await desk.getByLabel('Odometer at hand-back').fill('83916')
    await desk.getByLabel(/who agreed to the release/).selectOption({ label: greta.name })
    await desk.getByLabel(/^PIN of/).fill(greta.pin)
    await button(desk, 'Hand back the vehicle').click()
    await desk.getByText(/Handed back (at|on)/).waitFor({ timeout: 120_000 })
  })
})
