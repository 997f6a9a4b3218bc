import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it, onTestFailed } from 'vitest'
import { sensorSets } from '../../prisma/seeds/demo/sensor-sets.ts'
import { sensorOn } from '../support/order-in-flight.ts'
import { writeOwnOrder } from '../support/own-order.ts'
import { writeRotation } from '../support/rotation-in-flight.ts'
import {
  allSent,
  button,
  enroll,
  finishArrival,
  greta,
  ines,
  leaves,
  shows,
  signIn,
  unlock,
} from './support/bay.ts'
import { workFigures, workThrough } from './support/bay-steps.ts'
import { openDesk } from './support/begin.ts'
import { decideAndSign } from './support/customer.ts'
import { customerLink, handBack, issueEstimate, openOrder, sealAndDownload } from './support/desk.ts'
import { openNetwork, type ShopNetwork } from './support/shop-network.ts'
import { customer, plate, wheels, writeSilentOrder } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { makeTablet, type Tablet } from './support/tablet.ts'
import { tap } from './support/touch.ts'

/** The plate of a pickup whose spare has a sensor of its own: all five wheels change places. */
const pickup = 'MLR 6610'

/** By the clock of the tablet a drive takes 23 minutes, and a relearn that comes to nothing takes five. */
const minutesBehind = 30
let orderId = ''
const browser = setStage(minutesBehind, async (database) => {
  await writeRotation(
    database.serviceUrl,
    pickup,
    'five-rearward-cross',
    ({ wheel, closedBy }) => wheel === 'RR' && closedBy === 'wheel.mounted',
    minutesBehind,
  )
  orderId = await writeOwnOrder(
    database.serviceUrl,
    writeSilentOrder,
    ({ draft }) => draft.kind === 'wheel.checked' && draft.payload.wheel === 'LR',
  )
})

let network: ShopNetwork
let tablet: Tablet
let desk: Page
let bay: Page

const figures = { ...workFigures, odometerOut: '133703', odometerIn: '133717' }

beforeAll(async () => {
  desk = await openDesk(browser())
  network = await openNetwork(browser().address)
  tablet = makeTablet(network.address, minutesBehind)
  bay = await tablet.start()
  await bay.goto('/bay/enroll')
  await enroll(bay, await browser().desk.enrollmentCode())
  await shows(bay, 'Who is here?')
  // A browser writes its cookies down every half minute; a tablet has been enrolled for longer than that when its battery dies.
  await tablet.shutDown()
  bay = await tablet.start()
  await bay.goto('/bay')
  await signIn(bay, greta)
  await tap(button(bay, /^Signed in/))
  await signIn(bay, ines)
  await tap(bay.getByRole('link', { name: plate }))
  await shows(bay, 'Read what the vehicle stored')
})
afterAll(async () => {
  await tablet.throwAway()
  await network.close()
})

const orderShown = (): string => /[0-9a-f-]{36}/.exec(bay.url())?.[0] ?? ''

/** What the server's ledger holds of an order. */
const written = (of: string) => browser().desk.entriesOf(of)

/** The payloads of one kind, in the ledger's order. */
const payloads = async (kind: string, of = orderId) =>
  (await written(of)).filter((entry) => entry.kind === kind).map(({ payload }) => payload)

const seeFailure = () =>
  onTestFailed(async () => {
    await bay.screenshot({ path: 'out/bay-1.png' })
  })

it('an arrival check with its findings is written without a network, and is in the ledger once after it', async () => {
  seeFailure()
  await allSent(bay)
  const before = await written(orderId)

  network.set('gone')
  await finishArrival(bay, wheels)
  await shows(bay, /readings say/)
  // The findings are computed on the tablet.
  await tap(button(bay, 'I agree: confirm the findings'))
  await shows(bay, 'Nothing for the bay now')
  await bay.getByText(/^The server is out of reach\. .* What was written here is kept/).waitFor()
  await bay.getByText(/^Not yet sent: \d+$/).waitFor()
  expect(await written(orderId)).toHaveLength(before.length)

  network.set('there')
  await allSent(bay)
  await bay.getByText(/^The server is out of reach/).waitFor({ state: 'detached' })
  const arrival = await written(orderId)
  expect(arrival.filter(({ kind }) => kind === 'wheel.checked').length).toBeGreaterThanOrEqual(5)
  expect(arrival.filter(({ kind }) => kind === 'diagnosis.confirmed')).toHaveLength(1)
})

it('the work is done without a network too, through a dead battery in the middle of a torque and a relearn that runs out of time', async () => {
  seeFailure()
  await openOrder(desk, customer)
  await issueEstimate(desk)
  const link = await customerLink(desk)
  const phone = await browser().open('customer', new URL(link).pathname + new URL(link).hash)
  await decideAndSign(phone, customer)
  await leaves(bay, 'Nothing for the bay now')
  await allSent(bay)
  const before = await written(orderId)

  network.set('gone')
  await workThrough(bay, figures, /^Round at the figure/)
  const moved = () => button(bay, 'nut 2 moved')
  await tap(moved())
  await bay
    .locator('[aria-pressed=true]')
    .filter({ has: bay.getByText('nut 2') })
    .waitFor()
  const address = bay.url()
  await tablet.cutPower()

  bay = await tablet.start()
  await bay.goto(address)
  await signIn(bay, ines)
  // A tablet that dies at once may forget which wrench was taken; nothing of the wheel is forgotten.
  await workThrough(bay, figures, /^Round at the figure/)
  await bay.getByText('Right rear is on and NOT TORQUED').waitFor()
  expect(await moved().getAttribute('aria-pressed')).toBe('true')
  await workThrough(bay, figures, /^Make the vehicle learn/)

  await tap(button(bay, 'I have read it: go on'))
  await tap(button(bay, /^Time to learn/))
  for (const wheel of ['LF', 'RF']) await tap(button(bay, wheel, true).last())
  await tap(button(bay, /^Next/))
  await bay.clock.fastForward(5 * 60_000 + 1_000)
  // Nobody touched the tablet for so long: it has locked itself, and shows what is not sent as well.
  await bay.locator('.bay-locked').getByText('Right rear is torqued and UNCHECKED').waitFor()
  await unlock(bay, ines)
  await tap(button(bay, /^Did not accept/))
  await bay.getByText(/^It did not accept at .* Begin again/).waitFor()
  await tap(bay.getByRole('link', { name: 'My vehicles' }))
  await bay.getByRole('link', { name: plate }).getByText('Second person: right rear is torqued').waitFor()
  await tap(bay.getByRole('link', { name: plate }))
  await leaves(bay, 'My vehicles')
  await workThrough(bay, figures)
  expect(await written(orderId)).toHaveLength(before.length)

  network.set('there')
  await allSent(bay)
  const all = await written(orderId)
  expect(new Set(all.map(({ id }) => id)).size).toBe(all.length)
  expect(all.flatMap(({ given }) => given.holds ?? [])).toEqual([])
  const rounds = await payloads('studs.torqued')
  expect(rounds).toMatchObject([
    { round: 'half', moved: [] },
    { round: 'full', moved: [2] },
    { round: 'again', moved: [] },
  ])
  const [first, second, ...more] = await payloads('relearn.done')
  expect(more).toEqual([])
  expect(first).toMatchObject({ result: 'refused', confirmed: ['LF', 'RF'] })
  expect((first as { timed: { seconds: number } }).timed.seconds).toBeGreaterThanOrEqual(300)
  expect(second).toMatchObject({ result: 'learned', confirmed: ['LF', 'RF', 'RR', 'LR'] })
})

it('is sealed and handed back once the tablet is back', async () => {
  await openOrder(desk, customer)
  await sealAndDownload(desk)
  await handBack(desk, figures.odometerIn)
  expect((await written(orderId)).at(-1)?.kind).toBe('order.handed_back')
})

it('a rotation of five wheels is torqued, learned and compared where each wheel is now, the spare too', async () => {
  seeFailure()
  // By the clock that ran forward the tablet's own session is not one to go on with.
  await unlock(bay, ines)
  await tap(bay.getByRole('link', { name: 'My vehicles' }))
  await tap(bay.getByRole('link', { name: pickup }))
  await leaves(bay, 'My vehicles')
  const rotated = {
    ...workFigures,
    comesFrom: { 'left front': 'LR', 'right front': 'RR', 'left rear': 'RF', 'right rear': 'SP' },
    learns: ['LF', 'RF', 'RR', 'LR', 'SP'],
    closingSensor: '54.8',
  }
  const { LF, RF, RR, LR, SP } = sensorSets.haywainA
  const on = (id: string) => sensorOn(pickup, id)
  const whereTheyAre = { LF: on(LR), RF: on(RR), RR: on(SP), LR: on(RF), SP: on(LF) }
  const before = await workThrough(bay, rotated, /^Read the sensor again/)
  await tap(button(bay, 'All at once', true))
  await shows(bay, 'All sensors at once')
  await bay.getByRole('textbox', { name: 'Readings' }).fill(
    Object.entries(whereTheyAre)
      .map(([wheel, id]) => `${wheel}, ${id}, 54.8 psi, 55 F`)
      .join('\n'),
  )
  // Each step that it closes is named on the button, and gone afterwards.
  const record = button(bay, /^Record LF RF RR LR SP$/)
  expect((await record.boundingBox())?.height).toBeGreaterThanOrEqual(96)
  await tap(record)
  await leaves(bay, 'All sensors at once')
  const after = await workThrough(bay, rotated, /^Proof drive/)
  expect(after).not.toContainEqual(expect.stringMatching(/^Read the sensor again/))
  const done = [...before, ...after]
  await allSent(bay)
  const count = (step: RegExp) => done.filter((title) => step.test(title)).length
  expect(count(/^Wheel on/)).toBe(2)
  expect(count(/^(Round at|Once more)/)).toBe(12)
  expect(count(/^Second person checks/)).toBe(4)
  expect(await payloads('relearn.done', orderShown())).toMatchObject([
    { result: 'learned', confirmed: ['LF', 'RF', 'RR', 'LR', 'SP'] },
  ])
  const [stored] = await payloads('module.read', orderShown()).then((read) => read.slice(-1))
  expect(stored).toMatchObject({ phase: 'closing', ids: whereTheyAre })
  const heard = (await written(orderShown())).flatMap((entry) =>
    entry.kind === 'wheel.checked' &&
    entry.payload.phase === 'closing' &&
    entry.payload.sensor?.answer === 'answered'
      ? [[entry.payload.wheel, entry.payload.sensor.id]]
      : [],
  )
  expect(Object.fromEntries(heard)).toEqual(whereTheyAre)
})
