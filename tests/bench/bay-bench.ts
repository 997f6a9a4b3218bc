import { setTimeout as wait } from 'node:timers/promises'
import { people } from '../../prisma/seeds/demo/people.ts'
import { tamberStreet } from '../../prisma/seeds/demo/places.ts'
import { startNetwork } from '../faults/support/network.ts'
import { type QuickHand, quickHandOf } from '../faults/support/quick-hand.ts'
import { fair, outOfRange } from '../faults/support/weather.ts'
import { enroll, signIn } from '../journeys/support/bay.ts'
import { makeTablet, type Tablet } from '../journeys/support/tablet.ts'
import { writeOrderInFlight } from '../support/order-in-flight.ts'
import { handSeconds, operators } from './hand-seconds.ts'
import type { RunningShop } from './running-shop.ts'
import { percentile } from './statistics.ts'
import type { Figure } from './table.ts'

/** A tablet's processor beside that of this machine: Chromium lets every task take so many times as long. */
const slowdown = 6
const wheels = ['left front', 'right front', 'right rear', 'left rear'] as const
const tapRounds = 5
const doneRounds = 4
const replayed = 500

/**
 * The bay in a real Chromium on a tablet's screen: how long a tap takes to show, how long an entry takes until the screen says
 * that it is kept, how long the bay takes to its list from a cold start without a network, and how long a tablet takes to
 * bring home what it wrote alone.
 */
export const benchBay = async (shop: RunningShop): Promise<Figure[]> => {
  const network = await startNetwork(Number(new URL(shop.address).port), () => true)
  const tablet = makeTablet(network.address)
  try {
    const door = await tablet.start()
    await door.goto('/bay/enroll')
    await enroll(door, await enrollmentCode(shop))
    await signIn(door, people.ines)
    // Its browser writes down who it is, and the service worker has what it keeps.
    await door.evaluate(() => navigator.serviceWorker.ready.then(() => undefined))
    await tablet.shutDown()
    const page = await tablet.start()
    await page.goto('/bay')
    const hand = await quickHandOf(page, { lasts: true })
    await letIn(hand)
    await takeInHand(hand, await writeOrderInFlight(shop.serviceUrl, unknownHere, isSurroundings))
    const byHand = await handSeconds(hand)
    const { taps, rushed, done } = await throttled(hand, async () => ({
      taps: await tapTimes(hand, ofAPerson),
      rushed: await tapTimes(hand, atOnce),
      done: await doneTimes(hand),
    }))
    const replay = await replaySeconds(hand, shop, network.setWeather)
    await tablet.shutDown()
    network.setWeather(outOfRange)
    const interactive = await coldStarts(tablet)
    return [
      { name: 'bay.tap.p95.ms', value: at(taps, 0.95), unit: 'ms', goal: 100 },
      { name: 'bay.tap.rushed.p95.ms', value: at(rushed, 0.95), unit: 'ms', goal: null },
      { name: 'bay.done.p95.ms', value: at(done, 0.95), unit: 'ms', goal: null },
      { name: 'bay.interactive.ms', value: at(interactive, 0.5), unit: 'ms', goal: 3_000 },
      ...byHand(at(taps, 0.95) / 1_000),
      { name: 'outbox.replay500.s', value: replay, unit: 's', goal: 10 },
    ]
  } finally {
    await tablet.throwAway()
    await network.stop()
  }
}

const enrollmentCode = async (shop: RunningShop): Promise<string> => {
  const [desk] = await shop.desks(1)
  if (!desk) throw new Error('no desk')
  return JSON.parse((await desk.call('POST', '/api/enrollment-codes', { locationId: tamberStreet.id })).body)
    .code
}

/** Its sign-in may have outlived the restart. */
const letIn = async (hand: QuickHand): Promise<void> => {
  await hand.comes('.my-vehicles, .pin-sign-in', 20_000)
  if (await hand.isShown('.my-vehicles')) return
  await hand.press(people.ines.name)
  await hand.type(people.ines.pin)
  await hand.comes('.my-vehicles', 20_000)
}

/** An order at its arrival check, of a vehicle that is not here today. */
const unknownHere = { number: 'T-2602', plate: 'TMB 6158' }
const isSurroundings = ({ draft }: { readonly draft: { readonly kind: string } }): boolean =>
  draft.kind === 'surroundings.recorded'

/** Opens the order and takes a gauge. */
const takeInHand = async (hand: QuickHand, orderId: string): Promise<void> => {
  await hand.pressAt(`a[href$="${orderId}"]`, 20_000)
  await openGauge(hand, wheels[0])
  await hand.press(/GA-1/, 20_000)
}

const openGauge = async (hand: QuickHand, wheel: string): Promise<void> => {
  await hand.pressAt(`.plan-button[aria-label^="${wheel}"]`, 20_000)
  await hand.titled(new RegExp(`${wheel}|^Which gauge`), 20_000)
  if (/^(Gauge the|Which gauge)/.test(await hand.title())) return
  await hand.press('Gauge')
  await hand.titled(/^(Gauge the|Which gauge)/, 20_000)
}

const at = (values: readonly number[], share: number): number =>
  percentile(
    values.toSorted((one, other) => one - other),
    share,
  )

/** Does something while the tablet's processor is as slow as a tablet's. */
const throttled = async <T>({ page }: QuickHand, work: () => Promise<T>): Promise<T> => {
  const session = await page.context().newCDPSession(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
  const done = await work()
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 })
  return done
}

/** Milliseconds that a hand takes before it touches another target, and before the next key of a pad. */
type Pace = { readonly point: number; readonly key: number }

const ofAPerson: Pace = { point: operators.point * 1_000, key: operators.key * 1_000 }

/** As fast as the screen lets anybody: quicker than a hand, so that a touch also waits for what the one before it left. */
const atOnce: Pace = { point: 0, key: 0 }

/**
 * Milliseconds from each touch to the next picture after it, as the browser itself tells them (W3C Event Timing: from the
 * event to the presentation after its handlers, in steps of 8 ms; one under 16 ms is not told and counts as 16).
 */
const tapTimes = async (hand: QuickHand, pace: Pace): Promise<number[]> => {
  const { page } = hand
  await page.evaluate(() => {
    const told = new Map<number, number>()
    Object.assign(globalThis, { toldTaps: told })
    new PerformanceObserver((list) => {
      for (const { interactionId, duration } of list.getEntries() as PerformanceEventTiming[])
        if (interactionId > 0) told.set(interactionId, Math.max(duration, told.get(interactionId) ?? 0))
    }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit)
  })
  let taps = 0
  for (let round = 0; round < tapRounds; round += 1)
    for (const wheel of wheels) {
      await wait(pace.point)
      await openGauge(hand, wheel)
      await wait(pace.point - pace.key)
      for (const key of `3${round}.${wheels.indexOf(wheel)}`) {
        await wait(pace.key)
        await hand.type(key)
      }
      taps += 5
    }
  await wait(500)
  const told = await page.evaluate(() => [
    ...(globalThis as unknown as { toldTaps: Map<number, number> }).toldTaps.values(),
  ])
  return [...told, ...Array<number>(Math.max(0, taps - told.length)).fill(16)]
}

/**
 * Milliseconds from each touch that records a reading to the picture that offers to undo it: then the entry is on the disk,
 * `durability: 'strict'`, and the screen has said so.
 */
const doneTimes = async (hand: QuickHand): Promise<number[]> => {
  const times: number[] = []
  for (let round = 0; round < doneRounds; round += 1)
    for (const wheel of wheels) {
      await openGauge(hand, wheel)
      await hand.type(`4${round}.`)
      const done = hand.page.evaluate(millisecondsToDone)
      await hand.type(String(wheels.indexOf(wheel)))
      times.push(await done)
    }
  return times
}

/** Runs in the page: from the next touch's end until another undo than the one that is offered now is on the screen. */
const millisecondsToDone = (): Promise<number> =>
  new Promise((resolve) => {
    const offered = () => document.querySelector('.bay-undo')?.textContent?.split(' · ')[0]
    const before = offered()
    let touchedAt: number | null = null
    addEventListener('pointerup', ({ timeStamp }) => (touchedAt = timeStamp), { capture: true, once: true })
    const looking = new MutationObserver(() => {
      const now = offered()
      if (touchedAt === null || now === undefined || now === before) return
      const since = touchedAt
      looking.disconnect()
      requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - since)))
    })
    looking.observe(document.body, { childList: true, subtree: true, characterData: true })
  })

/**
 * Writes so many gauge readings through the screen while nothing answers, then brings the network back; gives the seconds
 * until the ledger holds them all.
 */
const replaySeconds = async (
  hand: QuickHand,
  { pool }: RunningShop,
  setWeather: (weather: typeof fair) => void,
): Promise<number> => {
  const written = async (): Promise<number> =>
    Number((await pool.query('select count(*) from entries')).rows[0].count)
  await hand.page.getByText(/Not yet sent/).waitFor({ state: 'detached' })
  const before = await written()
  setWeather(outOfRange)
  await hand.page.evaluate(writeReadings, replayed)
  const context = hand.page.context()
  await context.setOffline(true)
  setWeather(fair)
  const begun = performance.now()
  await context.setOffline(false)
  while ((await written()) < before + replayed) await wait(20)
  return (performance.now() - begun) / 1000
}

/** Runs in the page: presses the buttons as a screen reader does, one reading after the other. */
const writeReadings = async (count: number): Promise<void> => {
  const until = async (is: () => boolean) => {
    do await new Promise((resolve) => setTimeout(resolve))
    while (!is())
  }
  const title = () => document.querySelector('h1')?.textContent ?? ''
  const press = (selector: string) =>
    until(() => {
      const found = document.querySelector<HTMLButtonElement>(selector)
      found?.click()
      return found !== null
    })
  for (let reading = 0; reading < count; reading += 1) {
    const figure = (20 + reading / 10).toFixed(1)
    const wheel = `${reading % 2 === 0 ? 'left' : 'right'} front`
    await press(`.plan-button[aria-label^="${wheel}"]`)
    await until(() => title().includes(wheel))
    if (!title().startsWith('Gauge the')) {
      const tab = [...document.querySelectorAll('button')].find((one) => one.textContent === 'Gauge')
      tab?.click()
      await until(() => title().startsWith('Gauge the'))
    }
    for (const key of figure)
      await press(`form[aria-busy="false"] .pad-key[aria-label="${key === '.' ? 'point' : key}"]`)
  }
}

/** Milliseconds from an address typed into a browser that just started to the list of vehicles, with no server in reach. */
const coldStarts = async (tablet: Tablet): Promise<number[]> => {
  const times: number[] = []
  for (let start = 0; start < 3; start += 1) {
    const page = await tablet.start()
    const begun = performance.now()
    await page.goto('/bay')
    await page.locator('.my-vehicles, .pin-sign-in').first().waitFor()
    times.push(performance.now() - begun)
    await tablet.shutDown()
  }
  return times
}
