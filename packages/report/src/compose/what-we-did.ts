import { airWhenSet } from '@bayledger/ledger/questions/carried-pressure'
import { authorizedBundles, wheelsThatCameOff } from '@bayledger/ledger/questions/gates'
import { namedBundle } from '@bayledger/ledger/questions/named'
import { checkedAlone } from '@bayledger/ledger/questions/sole-worker'
import { torqueClock } from '@bayledger/ledger/questions/torque-clock'
import type { IssuedBundle, OrderState } from '@bayledger/ledger/state'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { bundleTitle } from '@bayledger/wording/bundles'
import type { PressureDone, SetBy, TorqueDone } from '@bayledger/wording/report/done'
import { durationWords } from './clock-words.ts'
import { isDone } from './done-bundles.ts'
import { figureWords, lastFour, number, torque } from './figures.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.done

/** The work in a few lines, each from what was recorded; nothing recorded is said to be nothing done. */
export const whatWeDid = (state: OrderState, context: Spoken): string[] => {
  const lines = [
    ...sensorLine(state, context),
    ...otherWorkLine(state, context),
    ...torqueLine(state, context),
    ...pressureLine(state, context),
    ...proofLine(state, context),
  ]
  if (lines.length > 0) return lines
  const isLookedAt = Object.keys(state.arrival.wheels).length > 0
  return [isLookedAt ? says(context).onlyLooked : says(context).nothingRecorded]
}

const sensorLine = (state: OrderState, context: Spoken): string[] => {
  const fitted = readingOrder.flatMap((wheel) => {
    const sensor = state.work[wheel]?.fitted
    return sensor ? [{ wheel: context.language.wheels.names[wheel], id: lastFour(sensor.sensorId) }] : []
  })
  return fitted.length === 0 ? [] : [says(context).fitted(fitted)]
}

/** Finished work that no other line mentions, by the title under which it was agreed to. */
const otherWorkLine = (state: OrderState, context: Spoken): string[] => {
  const done = authorizedBundles(state)
    .filter((bundle) => ownTitles.has(bundle.title) && isDone(state, bundle))
    .map((bundle) => bundleTitle(context.language, namedBundle(bundle)))
  return done.length === 0 ? [] : [says(context).done(done)]
}

const ownTitles: ReadonlySet<IssuedBundle['title']> = new Set([
  'stem',
  'leak',
  'leak-search',
  'puncture',
  'tire',
  'tires',
  'spare',
  'season',
  'rotation',
  'torque-again',
])

const torqueLine = (state: OrderState, context: Spoken): string[] => {
  const off = wheelsThatCameOff(state)
  if (off.length === 0) return []
  const wheels = off.map((wheel) => context.language.wheels.names[wheel])
  const sealed = off.filter((wheel) => state.work[wheel]?.rounds.again)
  const figure = state.work[sealed[0] ?? 'SP']?.rounds.again?.figure
  if (!figure) return [says(context).notTorqued(wheels)]
  return [says(context).torqued({ wheels, figure: figureWords(torque(figure)), ...checkOf(state, off) })]
}

/** Whether all were checked, by whom; and where one wheel came off, what the clock says of it. */
const checkOf = (state: OrderState, off: readonly WheelPosition[]): Pick<TorqueDone, 'took' | 'check'> => {
  const [wheel, ...others] = off
  const clock = wheel && others.length === 0 ? torqueClock(state, wheel) : null
  const by = checkedAlone(state).length > 0 ? 'same-person' : 'second-person'
  return {
    took: clock?.seconds == null ? null : durationWords(clock.seconds),
    check: off.every((one) => state.work[one]?.rounds.again && state.work[one]?.checked)
      ? { by, minutesLater: clock?.checkedAfterMinutes || null }
      : null,
  }
}

/** Wheels set to one target are named together; one that a limit held back is not said to be set for the day. */
const pressureLine = (state: OrderState, context: Spoken): string[] => {
  const groups: Readonly<Record<SetBy, Map<number, WheelPosition[]>>> = {
    day: new Map(),
    label: new Map(),
    limit: new Map(),
  }
  for (const wheel of readingOrder) {
    const target = state.work[wheel]?.pressure?.target
    if (!target) continue
    const { psi, capped } = target
    const group = groups[capped ? 'limit' : isForTheDay(state, wheel) ? 'day' : 'label']
    group.set(psi, [...(group.get(psi) ?? []), wheel])
  }
  const set = (['day', 'label', 'limit'] as const)
    .filter((by) => groups[by].size > 0)
    .map((by) => ({ by, set: [...groups[by]].map((group) => pressureDone(context, group)) }))
  return set.length === 0 ? [] : [says(context).set(set)]
}

const pressureDone = (
  context: Spoken,
  [psi, wheels]: readonly [number, readonly WheelPosition[]],
): PressureDone => {
  const road = wheels.filter((wheel) => wheel !== 'SP')
  return {
    psi: number(Math.round(psi * 10) / 10, 'psi'),
    road: road.length === 4 ? null : road.map((wheel) => context.language.wheels.names[wheel]),
    spare: wheels.includes('SP'),
  }
}

/** The target is for the tire's own temperature, where that was read. */
const isForTheDay = (state: OrderState, wheel: WheelPosition): boolean => {
  const set = state.work[wheel]?.pressure
  return set ? airWhenSet(set) !== null : false
}

/** Whole minutes of all drives; `null` where the clock of the tablet did not run on every one. */
const minutesByTheClock = ({ drives }: OrderState): number | null => {
  const seconds = drives.flatMap(({ timed }) => (timed === null ? [] : [timed.seconds]))
  const sum = seconds.reduce((total, one) => total + one, 0)
  return seconds.length < drives.length ? null : Math.floor(sum / 60)
}

const proofLine = (state: OrderState, context: Spoken): string[] => {
  const { relearn, drives } = state
  const last = drives.at(-1)
  if (!relearn && !last) return []
  const drive = last && {
    minutes: drives.reduce((sum, { minutes }) => sum + minutes, 0),
    byTheClock: minutesByTheClock(state),
    isLightOff: last.lightAtEnd === 'off',
  }
  const learned = relearn && (relearn.method === 'reset' ? 'reset' : relearn.result)
  return [says(context).proven({ relearn: learned, drive: drive ?? null })]
}
