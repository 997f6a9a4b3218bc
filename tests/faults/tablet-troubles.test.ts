import { setTimeout as wait } from 'node:timers/promises'
import { afterAll, beforeAll, expect, it, vi } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { handOf } from '../journeys/support/touch.ts'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'
import { loadShopWithoutOrders } from '../support/shop-without-orders.ts'
import { doErrand, type Errand, forgetUndo, isKept, visit } from './support/bay-taps.ts'
import { type FaultOrder, type FaultShop, startFaultShop } from './support/fault-shop.ts'
import { enrollTablet, type FaultTablet } from './support/fault-tablet.ts'
import { type Network, startNetwork } from './support/network.ts'
import type { Tap } from './support/taps.ts'
import { fair, outOfRange } from './support/weather.ts'

/** One tablet in the hands of Ines, and what may go wrong with it. */
let database: TestDatabase
let shop: FaultShop
let network: Network
let tablet: FaultTablet
let order: FaultOrder
beforeAll(async () => {
  database = await createTestDatabase()
  await loadShopWithoutOrders(database.serviceUrl, new Date().toISOString())
  shop = await startFaultShop({ ownerUrl: database.url, serviceUrl: database.serviceUrl })
  network = await startNetwork(shop.service.port)
  tablet = await enrollTablet(network, people.ines, await shop.enrollmentCode(), { lasts: true })
  const [first] = await shop.openFive()
  if (!first) throw new Error('no order')
  order = first
  await open(order)
}, 240_000)
afterAll(async () => {
  await tablet.throwAway()
  await network.stop()
  await shop.stop()
  await database.drop()
})

/** The list may take a moment to come. */
const open = (one: FaultOrder) => vi.waitUntil(() => visit(tablet.hand(), one), { timeout: 60_000 })

/** On a busy machine a screen may come later than the hand waits for it: nothing was tapped then, and it begins anew. */
const gauge = async (tenths: number, wheel: Errand['wheel'] = 'left front'): Promise<readonly Tap[]> => {
  const until = performance.now() + 60_000
  for (;;) {
    const tapped = await doErrand(tablet, { doing: 'gauge', order, wheel, tenths })
    if (tapped.length > 0 || performance.now() > until) return tapped
    await open(order)
  }
}

/** How often the ledger holds this reading, once the tablet has nothing left to send. */
const timesWritten = async (psi: number): Promise<number> => {
  while ((await tablet.store()).waiting > 0) await wait(50)
  const entries = await shop.entriesOf(order.orderId)
  return entries.filter(({ payload }) => JSON.stringify(payload).includes(`"value":${psi},"unit":"psi"`))
    .length
}

/** Whether the browser keeps one byte more for this address: what it counted before it goes on believing for a while. */
const hasRoom = (): Promise<boolean> =>
  tablet.hand().page.evaluate(
    () =>
      new Promise<boolean>((resolve) => {
        const opening = indexedDB.open('room')
        opening.onupgradeneeded = () => opening.result.createObjectStore('room')
        opening.onerror = () => resolve(false)
        opening.onsuccess = () => {
          const database = opening.result
          const end = (isKept: boolean) => {
            database.close()
            resolve(isKept)
          }
          const writing = database.transaction('room', 'readwrite', { durability: 'strict' })
          writing.objectStore('room').put(0, 0)
          writing.oncomplete = () => end(true)
          writing.onabort = () => end(false)
        }
      }),
  )

it('a tablet that is full says so, keeps what was typed, and writes it once there is room', async () => {
  const hand = tablet.hand()
  const session = await hand.page.context().newCDPSession(hand.page)
  const { origin } = new URL(network.address)
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 })
  await vi.waitUntil(async () => !(await hasRoom()), { timeout: 60_000, interval: 1_000 })
  const [refused] = await gauge(301)
  expect(refused?.isDone).toBe(false)
  await hand.page.getByText('This tablet could not keep it.').waitFor()
  expect(await timesWritten(30.1)).toBe(0)

  await session.send('Storage.overrideQuotaForOrigin', { origin })
  await vi.waitUntil(hasRoom, { timeout: 60_000, interval: 1_000 })
  await hand.press('I have read it')
  await hand.pressAt('.plan-button[aria-label^="left front"]')
  await hand.titled(/the left front/)
  if (!(await hand.title()).startsWith('Gauge the')) await hand.press('Gauge')
  expect(await hand.page.locator('.pad-entry').inputValue()).toBe('30.1')
  await hand.press(/^Record/)
  await hand.comes('.bay-undo')
  expect(await timesWritten(30.1)).toBe(1)
})

it('a key that is pressed twice while it records makes one entry', async () => {
  const hand = tablet.hand()
  await hand.pressAt('.plan-button[aria-label^="left front"]')
  await hand.titled(/the left front/)
  if (!(await hand.title()).startsWith('Gauge the')) await hand.press('Gauge')
  await hand.titled(/^Gauge the left front/)
  await forgetUndo(hand)
  await hand.type('30.')
  await (await handOf(hand.page)).doubleTap(hand.page.locator('.pad-key[aria-label="6"]'))
  expect(await isKept(hand)).toBe(true)
  expect(await timesWritten(30.6)).toBe(1)
})

it('what was tapped meanwhile reaches the server that was started in place of another one', async () => {
  network.setWeather(outOfRange)
  expect((await gauge(311))[0]?.isDone).toBe(true)
  await shop.service.stop()
  network.setWeather(fair)
  await shop.service.start()
  await tablet.findNetworkAgain()
  expect(await timesWritten(31.1)).toBe(1)
})

it('what comes home after the hand-back is in the tray with its reason, and on the tablet', async () => {
  const late = await shop.openAlmostDone()
  const hand = tablet.hand()
  await open(late)
  await vi.waitUntil(async () => /^See the light/.test(await hand.title()), { timeout: 30_000 })
  await forgetUndo(hand)
  network.setWeather(outOfRange)
  expect(await hand.press(/^Off/)).toBe(true)
  expect(await isKept(hand)).toBe(true)
  await shop.handBack(late)
  network.setWeather(fair)
  await tablet.findNetworkAgain()
  while ((await tablet.store()).waiting > 0) await wait(50)
  const mine = (await shop.tray()).filter(({ orderId }) => orderId === late.orderId)
  expect(mine).toMatchObject([
    {
      kind: 'telltale.observed',
      writtenBy: { staffId: people.ines.id },
      words: expect.stringMatching(/^This order has ended/),
    },
  ])
  await hand.page.getByText(/^Not taken/).waitFor()
  expect(await hand.isShown('.bay-undo')).toBe(false)
  expect((await shop.entriesOf(late.orderId)).at(-1)?.kind).toBe('order.handed_back')
  await open(order)
})

it.each([
  ['ahead', 24],
  ['behind', -24],
])('a clock that is a day %s neither loses nor doubles a reading', async (_, hours) => {
  const tenths = 330 + hours
  const { page } = tablet.hand()
  await page.clock.install({ time: Date.now() + hours * 3_600_000 })
  await tablet.reload()
  await open(order)
  const [tapped] = await gauge(tenths)
  expect(tapped?.isDone).toBe(true)
  expect(await timesWritten(tenths / 10)).toBe(1)
  const written = (await shop.entriesOf(order.orderId)).at(-1)
  // As the device says, beside what the server says: which of the two is right is for a person to see.
  const apart = Date.parse(written?.writtenAt ?? '') - Date.parse(written?.receivedAt ?? '')
  expect(Math.abs(apart - hours * 3_600_000)).toBeLessThan(3_600_000)
})

it('a connection that stays half-open for good does not keep a reading on the tablet', async () => {
  network.setWeather({ 'taken-half-open': 1 })
  expect((await gauge(351))[0]?.isDone).toBe(true)
  await wait(500)
  network.setWeather(fair)
  expect(await timesWritten(35.1)).toBe(1)
})
