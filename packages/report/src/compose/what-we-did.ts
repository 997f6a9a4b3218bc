import { airWhenSet } from '@bayledger/ledger/questions/carried-pressure'
import { authorizedBundles, wheelsThatCameOff } from '@bayledger/ledger/questions/gates'
import { namedBundle } from '@bayledger/ledger/questions/named'
import { checkedAlone } from '@bayledger/ledger/questions/sole-worker'
import { torqueClock } from '@bayledger/ledger/questions/torque-clock'
import type { IssuedBundle, OrderState } from '@bayledger/ledger/state'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { bundleTitle } from '@bayledger/wording/bundles'
import { english } from '@bayledger/wording/en/english'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { durationWords } from './clock-words.ts'
import { isDone } from './done-bundles.ts'
import { figureWords, lastFour, listed, number, plural, sentence, torque } from './figures.ts'

/** The work in a few lines, each from what was recorded; nothing recorded is said to be nothing done. */
export const whatWeDid = (state: OrderState): string[] => {
  const lines = [
    ...sensorLine(state),
    ...otherWorkLine(state),
    ...torqueLine(state),
    ...pressureLine(state),
    ...proofLine(state),
  ]
  if (lines.length > 0) return lines
  const isLookedAt = Object.keys(state.arrival.wheels).length > 0
  return [isLookedAt ? 'Looked and measured. No work was done.' : 'Nothing is recorded.']
}

const sensorLine = (state: OrderState): string[] => {
  const fitted = readingOrder.flatMap((wheel) => {
    const sensor = state.work[wheel]?.fitted
    return sensor ? [`${wheelNames[wheel]} (new ID ${lastFour(sensor.sensorId)})`] : []
  })
  if (fitted.length === 0) return []
  return [`Fitted a new sensor: ${listed(fitted)}.`]
}

/** Finished work that no other line mentions, by the title under which it was agreed to. */
const otherWorkLine = (state: OrderState): string[] => {
  const done = authorizedBundles(state)
    .filter((bundle) => ownTitles.has(bundle.title) && isDone(state, bundle))
    .map((bundle) => bundleTitle(english, namedBundle(bundle)))
  return done.length === 0 ? [] : [`Done: ${listed(done)}.`]
}

const ownTitles: ReadonlySet<IssuedBundle['title']> = new Set([
  'stem',
  'leak',
  'leak-search',
  'puncture',
  'tire',
  'season',
  'rotation',
])

const torqueLine = (state: OrderState): string[] => {
  const off = wheelsThatCameOff(state)
  if (off.length === 0) return []
  const sealed = off.filter((wheel) => state.work[wheel]?.rounds.again)
  const figure = state.work[sealed[0] ?? 'SP']?.rounds.again?.figure
  if (!figure) return [`Took off ${namesOf(off)}; not yet torqued.`]
  const { took, later } = oneWheelClock(state, off)
  const checked = sealed.filter((wheel) => state.work[wheel]?.checked)
  const check =
    checked.length < off.length
      ? ''
      : checkedAlone(state).length > 0
        ? `, checked again${later}; no second person was available`
        : `, checked by a second person${later}`
  return [`Took off ${namesOf(off)}; torqued to ${figureWords(torque(figure))}${took}${check}.`]
}

/** Where one wheel came off, how long its torque took and how long after it was checked. */
const oneWheelClock = (
  state: OrderState,
  [wheel, ...others]: readonly WheelPosition[],
): { readonly took: string; readonly later: string } => {
  const clock = wheel && others.length === 0 ? torqueClock(state, wheel) : null
  return {
    took: clock?.seconds == null ? '' : ` in ${durationWords(clock.seconds)}`,
    later: clock?.checkedAfterMinutes ? ` ${clock.checkedAfterMinutes} min later` : '',
  }
}

const namesOf = (wheels: readonly WheelPosition[]): string =>
  `the ${listed(wheels.map((wheel) => wheelNames[wheel]))} wheel${wheels.length === 1 ? '' : 's'}`

/** Wheels set to one target are named together; one that a limit held back is not said to be set for the day. */
const pressureLine = (state: OrderState): string[] => {
  const forTheDay = new Map<number, WheelPosition[]>()
  const byTheLabel = new Map<number, WheelPosition[]>()
  const atItsLimit = new Map<number, WheelPosition[]>()
  for (const wheel of readingOrder) {
    const target = state.work[wheel]?.pressure?.target
    if (!target) continue
    const { psi, capped } = target
    const group = capped ? atItsLimit : isForTheDay(state, wheel) ? forTheDay : byTheLabel
    group.set(psi, [...(group.get(psi) ?? []), wheel])
  }
  const groups = [
    { group: forTheDay, how: ' for today’s temperature' },
    { group: byTheLabel, how: ' by the label' },
    { group: atItsLimit, how: ', as far as its limit allows' },
  ]
  const parts = groups.flatMap(({ group, how }) =>
    group.size === 0 ? [] : [`${listed([...group].map(setTo))}${how}`],
  )
  return parts.length === 0 ? [] : [`Set ${parts.join('; ')}.`]
}

const setTo = ([psi, wheels]: readonly [number, readonly WheelPosition[]]): string =>
  `${setNames(wheels)} to ${number(Math.round(psi * 10) / 10, 'psi')} psi`

/** The target is for the tire's own temperature, where that was read. */
const isForTheDay = (state: OrderState, wheel: WheelPosition): boolean => {
  const set = state.work[wheel]?.pressure
  return set ? airWhenSet(set) !== null : false
}

const setNames = (wheels: readonly WheelPosition[]): string => {
  const road = wheels.filter((wheel) => wheel !== 'SP')
  const rest = wheels.includes('SP') ? ['spare'] : []
  return listed([
    ...(road.length === 4 ? ['all four tires'] : road.map((wheel) => wheelNames[wheel])),
    ...rest,
  ])
}

const relearnWords = {
  learned: 'the car accepted its sensors',
  refused: 'the car did not accept its sensors',
  'learns-while-driven': 'the car learns its sensors while it is driven',
} as const

/** Said where the clock of the tablet ran on every drive. */
const clockWords = ({ drives }: OrderState): string => {
  const seconds = drives.flatMap(({ timed }) => (timed === null ? [] : [timed.seconds]))
  const sum = seconds.reduce((total, one) => total + one, 0)
  return seconds.length < drives.length ? '' : ` (${Math.floor(sum / 60)} by the clock)`
}

const proofLine = (state: OrderState): string[] => {
  const relearn = state.relearn
    ? state.relearn.method === 'reset'
      ? ['the monitoring system was reset']
      : [relearnWords[state.relearn.result]]
    : []
  const minutes = state.drives.reduce((sum, drive) => sum + drive.minutes, 0)
  const last = state.drives.at(-1)
  const drive = last
    ? [
        `we drove ${plural(minutes, 'minute')}${clockWords(state)} and the warning light was ${last.lightAtEnd === 'off' ? 'off' : 'on'} at the end`,
      ]
    : []
  const parts = [...relearn, ...drive]
  return parts.length === 0 ? [] : [`${sentence(parts.join('; '))}.`]
}
