import * as z from 'zod/mini'

/** Where a wheel sits: the trade's own letters; SP is the spare. */
export const WheelPosition = z.enum(['LF', 'RF', 'RR', 'LR', 'SP'])
export type WheelPosition = z.infer<typeof WheelPosition>

/** A place on a hub. */
export const RoadPosition = z.enum(['LF', 'RF', 'RR', 'LR'])
export type RoadPosition = z.infer<typeof RoadPosition>

/** The order in which wheels are gauged and sensors are read (common practice, no source). */
export const readingOrder = ['LF', 'RF', 'RR', 'LR', 'SP'] as const satisfies readonly WheelPosition[]

export const roadPositions = ['LF', 'RF', 'RR', 'LR'] as const satisfies readonly RoadPosition[]

export type Axle = 'front' | 'rear' | 'spare'

/** Which of a sheet's front, rear and spare figures governs a position. */
export const axleOf = (position: WheelPosition): Axle =>
  position === 'SP' ? 'spare' : position === 'LF' || position === 'RF' ? 'front' : 'rear'

/** The given positions in reading order, each once. */
export const inReadingOrder = (positions: Iterable<WheelPosition>): WheelPosition[] => {
  const wanted = new Set(positions)
  return readingOrder.filter((position) => wanted.has(position))
}
