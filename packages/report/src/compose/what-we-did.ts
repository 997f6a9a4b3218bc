import { wheelsThatCameOff } from '@bayledger/ledger/questions/gates'
import { checkedAlone } from '@bayledger/ledger/questions/sole-worker'
import type { OrderState } from '@bayledger/ledger/state'
import { readingOrder, type WheelPosition, wheelNames } from '@bayledger/reckoning/wheels'
import { figureWords, lastFour, listed, number, plural, sentence, torque } from './figures.ts'

/** The work in at most four lines, each from what was recorded; nothing recorded is said to be nothing done. */
export const whatWeDid = (state: OrderState): string[] => {
  const lines = [...sensorLine(state), ...torqueLine(state), ...pressureLine(state), ...proofLine(state)]
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

const torqueLine = (state: OrderState): string[] => {
  const off = wheelsThatCameOff(state)
  if (off.length === 0) return []
  const sealed = off.filter((wheel) => state.work[wheel]?.rounds.again)
  const figure = state.work[sealed[0] ?? 'SP']?.rounds.again?.figure
  if (!figure) return [`Took off ${namesOf(off)}; not yet torqued.`]
  const checked = sealed.filter((wheel) => state.work[wheel]?.checked)
  const check =
    checked.length < off.length
      ? ''
      : checkedAlone(state).length > 0
        ? ', checked again; no second person was available'
        : ', checked by a second person'
  return [`Took off ${namesOf(off)}; torqued to ${figureWords(torque(figure))}${check}.`]
}

const namesOf = (wheels: readonly WheelPosition[]): string =>
  `the ${listed(wheels.map((wheel) => wheelNames[wheel]))} wheel${wheels.length === 1 ? '' : 's'}`

/** Wheels set to one target are named together. */
const pressureLine = (state: OrderState): string[] => {
  const byTarget = new Map<number, WheelPosition[]>()
  for (const wheel of readingOrder) {
    const target = state.work[wheel]?.pressure?.target.psi
    if (target !== undefined) byTarget.set(target, [...(byTarget.get(target) ?? []), wheel])
  }
  if (byTarget.size === 0) return []
  const parts = [...byTarget].map(
    ([psi, wheels]) => `${setNames(wheels)} to ${number(Math.round(psi * 10) / 10, 'psi')} psi`,
  )
  return [`Set for today’s temperature: ${listed(parts)}.`]
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
        `we drove ${plural(minutes, 'minute')} and the warning light was ${last.lightAtEnd === 'off' ? 'off' : 'on'} at the end`,
      ]
    : []
  const parts = [...relearn, ...drive]
  return parts.length === 0 ? [] : [`${sentence(parts.join('; '))}.`]
}
