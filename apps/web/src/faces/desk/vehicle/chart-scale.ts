import type { TimedReading, VehiclePage } from '@bayledger/contract/vehicle-page'

export const chartSize = { width: 640, height: 260, left: 44, right: 130, top: 12, bottom: 28 } as const

/** A reading of a road wheel that can be compared with others: a spare's own pressure would flatten them. */
export type ComparedReading = TimedReading & { readonly comparedPsi: number }

export const compared = (readings: readonly TimedReading[]): ComparedReading[] =>
  readings.filter(
    (reading): reading is ComparedReading => reading.comparedPsi !== null && reading.wheel !== 'SP',
  )

export type ChartScale = {
  readonly x: (at: string) => number
  readonly y: (psi: number) => number
  /** Pressures at which a rule is drawn, psi. */
  readonly rules: readonly number[]
}

/** Steps of the rules, psi; the first that gives at most six of them. */
const steps = [1, 2, 5, 10, 20, 50]

/** How a chart of these readings and warning points is laid out; `null` without a reading. */
export const chartScale = (
  readings: readonly ComparedReading[],
  warnAt: VehiclePage['warnAt'],
): ChartScale | null => {
  const times = readings.map(({ at }) => Date.parse(at))
  const pressures = [
    ...readings.map(({ comparedPsi }) => comparedPsi),
    ...(warnAt === null ? [] : [warnAt.front, warnAt.rear]),
  ]
  if (times.length === 0) return null
  const lowest = Math.min(...pressures)
  const highest = Math.max(...pressures)
  const step = steps.find((one) => (highest - lowest) / one <= 6) ?? 100
  const from = Math.floor(lowest / step) * step
  const to = Math.max(Math.ceil(highest / step) * step, from + step)
  const first = Math.min(...times)
  const span = Math.max(Math.max(...times) - first, 1)
  const { width, height, left, right, top, bottom } = chartSize
  return {
    x: (at) => left + ((Date.parse(at) - first) / span) * (width - left - right),
    y: (psi) => top + ((to - psi) / (to - from)) * (height - top - bottom),
    rules: Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step),
  }
}
