import { setTimeout as wait } from 'node:timers/promises'
import type { SentEntry } from '@bayledger/contract/entries'
import { canonicalText } from '@bayledger/ledger/digests'
import { fold } from '@bayledger/ledger/fold'
import { doErrand, visit } from './bay-taps.ts'
import type { FaultOrder, FaultShop } from './fault-shop.ts'
import type { FaultTablet } from './fault-tablet.ts'
import { type PlannedStep, planRound } from './round-plan.ts'
import { judgeTaps, type Tap } from './taps.ts'
import { fair, weathers } from './weather.ts'

export type RoundResult = {
  /** Entries of which a screen said that they are done. */
  readonly entries: number
  readonly lost: number
  readonly twice: number
  /** Orders that a tablet holds otherwise than the server. */
  readonly diverged: number
  /** What is wrong, one line each. */
  readonly faults: readonly string[]
}

export type World = { readonly shop: FaultShop; readonly tablets: readonly [FaultTablet, FaultTablet] }

const settleMilliseconds = 60_000
/** A page reads what others wrote when it is woken, or when the order is opened. */
const catchUpMilliseconds = 20_000

/**
 * One round: both tablets work on the same five orders under their weathers while the server may be killed and tablets
 * die; then the weather clears, and what was tapped is held against the ledger, the tray and both tablets. `note` hears
 * what happens.
 */
export const runRound = async (
  { shop, tablets }: World,
  { seed, steps }: { readonly seed: number; readonly steps: number },
  note: (words: string) => void,
): Promise<RoundResult> => {
  const orders = await shop.openFive()
  const plan = planRound(seed, orders, steps)
  for (const [index, { network }] of tablets.entries()) network.begin(2 * seed + index)
  await Promise.all(tablets.map((tablet) => openAll(tablet, orders)))
  const [first, second] = tablets
  const taps = await Promise.all([
    work(first, plan.tablets[0], (words) => note(`${first.person.name}: ${words}`)),
    work(second, plan.tablets[1], (words) => note(`${second.person.name}: ${words}`)),
    killServer(shop, plan.kill, note).then((): Tap[] => []),
  ])
  note('the weather clears')
  for (const tablet of tablets) {
    tablet.network.setWeather(fair)
    await tablet.findNetworkAgain()
  }
  const waiting = await Promise.all(tablets.map(settled))
  const ledgers = new Map<string, readonly SentEntry[]>()
  for (const { orderId } of orders) ledgers.set(orderId, await shop.entriesOf(orderId))
  const told = (await Promise.all(tablets.map((tablet) => tablet.store()))).flatMap(({ refused }) => refused)
  const verdict = judgeTaps(taps.flat(), [...ledgers.values()].flat(), await shop.tray(), told)
  const apart = (await Promise.all(tablets.map((tablet) => differences(tablet, ledgers)))).flat()
  await shop.putAway(orders)
  return {
    ...verdict,
    diverged: apart.length,
    faults: [...verdict.faults, ...waiting.flat(), ...apart],
  }
}

/** Opens each order once, so that the tablet holds it when the network goes. */
const openAll = async (tablet: FaultTablet, orders: readonly FaultOrder[]): Promise<void> => {
  for (const order of orders)
    for (let tries = 0; ; tries += 1) {
      // It waited while the round before was judged.
      await tablet.unlock()
      if (await visit(tablet.hand(), order)) break
      if (tries > 5) throw new Error(`${tablet.person.name} cannot open ${order.orderId} in fair weather`)
      await wait(500)
    }
}

const work = async (
  tablet: FaultTablet,
  steps: readonly PlannedStep[],
  note: (words: string) => void,
): Promise<Tap[]> => {
  const taps: Tap[] = []
  for (const { weather, errand, mishap } of steps) {
    if (weather !== null) {
      note(`weather: ${weather}`)
      tablet.network.setWeather(weathers[weather] ?? fair)
    }
    const { doing, wheel, tenths, order } = errand
    await tablet.unlock()
    const tapped = await doErrand(tablet, errand)
    taps.push(...tapped)
    const became = tapped.map(({ kind, isDone }) => `${kind} ${isDone ? 'done' : 'not said done'}`)
    note(`${doing} ${wheel} ${tenths / 10} at ${order.orderId}: ${became.join(', ') || 'not offered'}`)
    if (mishap !== null && tapped.some(({ isDone }) => isDone)) {
      note(mishap)
      await suffer(tablet, mishap)
    }
  }
  return taps
}

/** The page itself comes from the server: a tablet is opened again where the network works. */
const suffer = async (tablet: FaultTablet, mishap: NonNullable<PlannedStep['mishap']>): Promise<void> => {
  const befall = { reload: tablet.reload, crash: tablet.crash, 'power cut': tablet.cutPower }
  tablet.network.setWeather(fair)
  await befall[mishap]()
}

const killServer = async (
  { service }: FaultShop,
  kill: { readonly after: number; readonly downFor: number } | null,
  note: (words: string) => void,
): Promise<void> => {
  if (kill === null) return
  await wait(kill.after)
  note('the server is killed')
  await service.kill()
  await wait(kill.downFor)
  await service.start()
  note('the server is back')
}

/** Waits until the tablet has nothing left to send; says so where it does not come to that. */
const settled = async (tablet: FaultTablet): Promise<string[]> => {
  for (const end = performance.now() + settleMilliseconds; performance.now() < end; await wait(50))
    if ((await tablet.store()).waiting === 0) return []
  const { waiting } = await tablet.store()
  return [`${tablet.person.name}: ${waiting} still wait after ${settleMilliseconds / 1000} s of fair weather`]
}

/** Opens each order and compares what the page holds with the server, and how both read it. */
const differences = async (
  tablet: FaultTablet,
  ledgers: ReadonlyMap<string, readonly SentEntry[]>,
): Promise<string[]> => {
  const apart: string[] = []
  for (const [orderId, ledger] of ledgers) {
    let isOpen = false
    let held: readonly SentEntry[] = []
    for (const end = performance.now() + catchUpMilliseconds; performance.now() < end; await wait(50)) {
      // On a busy machine it may lock itself meanwhile.
      await tablet.unlock()
      isOpen = await visit(tablet.hand(), { orderId, stage: 'arrival' })
      held = (await tablet.held()).get(orderId) ?? []
      if (isOpen && held.length >= ledger.length) break
    }
    const apartBy = isOpen ? differenceOf(held, ledger) : 'is not shown'
    if (apartBy !== null) apart.push(`${tablet.person.name}, ${orderId}: ${apartBy}`)
  }
  return apart
}

/** How two readings of an order differ; money lies beside the entries and is in neither. */
const differenceOf = (held: readonly SentEntry[], ledger: readonly SentEntry[]): string | null => {
  const at = ledger.findIndex(({ hash }, index) => hash !== held[index]?.hash)
  if (at >= 0) return `the tablet's entry ${at + 1} of ${ledger.length} is another one or missing`
  if (held.length > ledger.length) return `the tablet holds ${held.length - ledger.length} more entries`
  const [here, there] = [held, ledger].map(stateOf)
  const parts = Object.keys(there ?? {}).filter((part) => here?.[part] !== there?.[part])
  return parts.length === 0 ? null : `the same entries are read otherwise: ${parts.join(', ')}`
}

/** The folded order, each of its parts as text. Members of an object come in any order, from memory and from the database. */
const stateOf = (entries: readonly SentEntry[]): Record<string, string> =>
  Object.fromEntries(
    Object.entries(fold(entries as Parameters<typeof fold>[0])).map(([part, value]) => [
      part,
      value === undefined ? '' : canonicalText(JSON.parse(JSON.stringify(value))),
    ]),
  )
