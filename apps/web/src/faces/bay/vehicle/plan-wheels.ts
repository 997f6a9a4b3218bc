import { wheelStatus } from '@bayledger/ledger/questions/gates'
import type { OrderState, WheelReadings } from '@bayledger/ledger/state'
import { axleOf, readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { PlanLine, PlanWheel } from '../../../features/plan/plan-wheel.ts'
import { lastFour } from '../../../features/sensor-ids/id-text.ts'
import { pressureText } from '../../../lib/format.ts'

/** The order's wheels as the drawing shows them; `current` is the one at work. */
export const planWheels = (
  state: OrderState,
  current: WheelPosition | null,
): Partial<Record<WheelPosition, PlanWheel>> =>
  Object.fromEntries(
    readingOrder
      .filter((wheel) => wheel !== 'SP' || state.sheet?.sheet.spare !== 'none')
      .map((wheel) => [wheel, planWheel(state, wheel, wheel === current)]),
  )

const planWheel = (state: OrderState, wheel: WheelPosition, isCurrent: boolean): PlanWheel => {
  const status = wheelStatus(state, wheel)
  const loud = loudWords[status]
  if (loud)
    return {
      state: 'off',
      ringWord: loud.word,
      lines: [{ text: loud.says }],
      label: `${wheelNames[wheel]}: ${loud.word.toLowerCase()}, ${loud.says}`,
    }
  const lines = linesOf(state, wheel)
  return {
    state: isCurrent ? 'current' : 'none',
    lines,
    label: `${wheelNames[wheel]}: ${lines.map(({ text, unit }) => (unit ? `${text} ${unit}` : text)).join(', ')}`,
  }
}

const loudWords: Partial<Record<ReturnType<typeof wheelStatus>, { word: string; says: string }>> = {
  off: { word: 'OFF', says: 'not torqued' },
  untorqued: { word: 'ON', says: 'not torqued' },
  unchecked: { word: 'ON', says: 'unchecked' },
}

/** The wheel's newest figure and its sensor's answer; unchecked parts say that they are unchecked. */
const linesOf = (state: OrderState, wheel: WheelPosition): PlanLine[] => {
  const set = state.work[wheel]?.pressure
  if (set)
    return [{ text: pressureText(set.asLeft), unit: set.asLeft.unit, isFigure: true }, { text: 'as left' }]
  const arrival = state.arrival.wheels[wheel]
  const gauge = arrival?.gauge
  const sensor = isHeard(state, wheel) ? sensorWords(arrival) : null
  const figure: PlanLine[] = gauge
    ? [{ text: pressureText(gauge.pressure), unit: gauge.pressure.unit, isFigure: true }]
    : [{ text: arrival?.notPossible.some(({ field }) => field === 'gauge') ? 'gauge: cannot' : 'not gauged' }]
  return sensor === null ? figure : [...figure, { text: sensor }]
}

const isHeard = ({ sheet }: OrderState, wheel: WheelPosition): boolean =>
  sheet?.sheet.system === 'direct' && (axleOf(wheel) !== 'spare' || sheet.sheet.spareMonitored)

const sensorWords = (readings: WheelReadings | undefined): string => {
  const reading = readings?.sensor?.reading
  if (reading?.answer === 'answered')
    return reading.id === null ? 'answers' : `answers · ${lastFour(reading.id)}`
  if (reading?.answer === 'silent') return `silent × ${reading.tries}`
  return readings?.notPossible.some(({ field }) => field === 'answer') ? 'sensor: cannot' : 'sensor ?'
}
