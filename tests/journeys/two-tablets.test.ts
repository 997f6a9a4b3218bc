import { fold } from '@bayledger/ledger/fold'
import { openConflicts } from '@bayledger/ledger/questions/conflicts'
import { openHolds } from '@bayledger/ledger/questions/open-holds'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { freeMoor } from '../support/free-vehicles.ts'
import { writeOrderInFlight } from '../support/order-in-flight.ts'
import { allSent, button, enroll, greta, ines, leaves, shows, signIn, type } from './support/bay.ts'
import { workFigures } from './support/bay-steps.ts'
import { openNetwork, type ShopNetwork } from './support/shop-network.ts'
import { setStage } from './support/stage.ts'
import { makeTablet, type Tablet } from './support/tablet.ts'
import { tap } from './support/touch.ts'

/** A vehicle that was never here: its temperatures are noted, and nothing else of its arrival check. */
let arriving = ''
const browser = setStage(null, async ({ serviceUrl }) => {
  arriving = await writeOrderInFlight(
    serviceUrl,
    { ...freeMoor, number: 'T-2603' },
    ({ draft }) => draft.kind === 'telltale.observed',
  )
})
/** A demo vehicle whose right rear wheel is off. */
const atWork = 'S. Achterberg'

/** Ines works where the network goes; Greta stands beside the door. */
let network: ShopNetwork
let tablet: Tablet
let away: Page
let near: Page

beforeAll(async () => {
  network = await openNetwork(browser().address)
  tablet = makeTablet(network.address)
  away = await tablet.start()
  await away.goto('/bay/enroll')
  await enroll(away, await browser().desk.enrollmentCode())
  await signIn(away, ines)
  near = await browser().open('bay', '/bay/enroll')
  await enroll(near, await browser().desk.enrollmentCode())
  await signIn(near, greta)
})
afterAll(async () => {
  await tablet.throwAway()
  await network.close()
})

const entriesOf = (orderId: string) => browser().desk.entriesOf(orderId)
const idOf = (page: Page): string => /[0-9a-f-]{36}/.exec(page.url())?.[0] ?? ''

/** The gauge readings of a wheel that stand in the ledger, in psi. */
const gauged = async (wheel: string): Promise<(number | undefined)[]> => {
  const entries = await entriesOf(arriving)
  const struck = new Set(entries.map((one) => (one.kind === 'entry.struck' ? one.payload.entryId : null)))
  return entries.flatMap((one) =>
    one.kind === 'wheel.checked' && one.payload.wheel === wheel && !struck.has(one.id)
      ? [one.payload.gauge?.pressure.value]
      : [],
  )
}
const conflicts = async () =>
  openConflicts(fold(await entriesOf(arriving))).map(({ fact, wheel }) => `${wheel} ${fact}`)

const wheelOn = (page: Page, name: string) => page.locator(`.plan-button[aria-label^="${name}"]`)
const openGauge = async (page: Page, name: string) => {
  await tap(wheelOn(page, name))
  await tap(button(page, /GA-1/))
  await shows(page, `Gauge the ${name} tire`)
}

/** Withdraws the newest entry of which the history says so. */
const withdraw = async (page: Page, words: string) => {
  await tap(button(page, 'History', true))
  await tap(button(page, new RegExp(`^Withdraw \\d+: ${words}`)).first())
  await tap(button(page, /^Wrong value/))
  await tap(button(page, /^No more to say/))
  await tap(button(page, 'Withdraw it'))
  await shows(page, 'History')
  await tap(button(page, 'Back to the step'))
}

describe('two tablets on one arrival check', () => {
  it('merge entry by entry, and what was half filled in is offered beside what the other one recorded', async () => {
    onTestFailed(() => browser().picture('out'))
    for (const page of [away, near]) await tap(page.locator(`a[href$="${arriving}"]`))
    await openGauge(away, 'right front')
    await allSent(away)
    network.set('gone')
    await type(away, '31.4')
    await shows(away, 'Gauge the right rear tire')
    await type(away, '29')
    await openGauge(near, 'left front')
    await type(near, '32.1')
    await type(near, '31.0')
    await shows(near, 'Gauge the right rear tire')
    await type(near, '30.5')

    network.set('there')
    await away
      .getByText(/^Greta Lund-Sorrel recorded the right rear pressure on another tablet at \d+:\d\d/)
      .waitFor({ timeout: 30_000 })
    await away.getByText(/You had typed: 29\./).waitFor()
    await allSent(away)
    // GA-1 reads 0.2 psi too much: what is shown is corrected, what is on record is what it showed.
    for (const page of [away, near])
      await page.locator('.plan-button[aria-label^="left front"][aria-label*="31.9"]').waitFor()

    await tap(button(away, 'Go on with mine'))
    await shows(away, 'Gauge the right rear tire')
    await type(away, '.5')
    await button(away, 'Go on with mine').waitFor({ state: 'detached' })
    await allSent(away)
    expect(await gauged('LF')).toEqual([32.1])
    expect((await gauged('RF')).sort()).toEqual([31, 31.4])
    expect((await gauged('RR')).sort()).toEqual([29.5, 30.5])
  })

  it('keep both readings of one tire where they differ, until a person picks', async () => {
    onTestFailed(() => browser().picture('out'))
    expect((await conflicts()).sort()).toEqual(['RF gauge', 'RR gauge'])
    await withdraw(near, 'Wheel read, RR: 29.5 psi')
    await withdraw(near, 'Wheel read, RF: 31.0 psi')
    await allSent(near)
    await expect.poll(conflicts).toEqual([])
    expect([await gauged('RF'), await gauged('RR')]).toEqual([[31.4], [30.5]])
  })
})

it('a step that two tablets closed is kept twice, and a person withdraws one', async () => {
  onTestFailed(() => browser().picture('out'))
  for (const page of [away, near]) {
    await tap(page.getByRole('link', { name: 'My vehicles' }))
    await tap(page.getByRole('link', { name: new RegExp(atWork) }))
    await shows(page, /^Draw the sensor/)
  }
  const orderId = idOf(away)
  const draw = async (page: Page) => {
    await tap(button(page, workFigures.partNumber))
    await tap(button(page, 'Record the part'))
    await leaves(page, 'Draw the sensor, match it by scan: right rear')
  }
  const drawn = async () =>
    (await entriesOf(orderId)).filter((one) => one.kind === 'part.drawn' && one.payload.wheel === 'RR')
  const doubts = async () => openHolds(fold(await entriesOf(orderId))).map(({ code }) => code)
  network.set('gone')
  await draw(away)
  await draw(near)
  await allSent(near)
  network.set('there')
  await expect.poll(async () => (await drawn()).length).toBe(2)
  expect((await drawn()).map(({ writtenBy }) => writtenBy)).toEqual([
    { kind: 'staff', staffId: people.greta.id },
    { kind: 'staff', staffId: people.ines.id },
  ])
  expect(await doubts()).toEqual(['heard-late'])
  await allSent(away)
  await withdraw(away, 'Part drawn')
  await expect.poll(doubts).toEqual([])
  expect(fold(await entriesOf(orderId)).work.RR?.part?.written.by).toEqual({
    kind: 'staff',
    staffId: people.greta.id,
  })
})
