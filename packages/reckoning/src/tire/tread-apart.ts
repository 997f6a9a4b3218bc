import { inMillimeters, type Length } from '../units/length-units.ts'
import { type Millimeters, millimeters } from '../units/measured.ts'
import { inReadingOrder, type RoadPosition } from '../wheels.ts'
import { circumference } from './geometry.ts'
import type { MeasuredTireSize } from './tire-size.ts'

/** A tire on the road: its tread, and its size where that says a diameter. */
export type TireOnRoad = { readonly tread: Length; readonly size: MeasuredTireSize | null }

/** How far the tires of some wheels are apart. `aroundApart`: `null` where one of the sizes says no diameter. */
export type TiresApart = {
  readonly wheels: readonly RoadPosition[]
  readonly treadApart: Millimeters
  readonly aroundApart: Millimeters | null
  /** Over 2/32 in of tread. */
  readonly isTreadOver: boolean
  /** Over 1/4 in around the tire; `null` where it is not known. */
  readonly isAroundOver: boolean | null
}

const mostTreadApart = inMillimeters({ value: 2, unit: '1/32 in' })
const mostAroundApart = inMillimeters({ value: 0.25, unit: 'in' })
/** Depths are read to whole 32nds; the sums of them are not exact. */
const slightest = 1e-9

/**
 * How far the tires of the same axle, or of all four wheels, are apart in tread and around. An axle or a center differential
 * has to even out what one tire rolls farther than the other. The vehicle maker's limit governs, where there is one.
 *
 * @formula tread: deepest − shallowest; around: largest − smallest of circumference − 2π · (deepest tread − own tread)
 * @units mm, 1/32 in or in to mm; the limits are 2/32 in of tread and 1/4 in around
 * @limits nominal sizes, of which two tires of one size may differ by more than their tread; the tires are taken to have been
 * of the same depth when new
 * @source 2/32 in side to side, and front to back on all-wheel drive: a repair shop's page (read); 1/4 in around: another
 * repair shop's page (read). Both say that the vehicle maker's limit governs. The circle (computed from definition)
 */
export const tiresApart = (tires: Readonly<Partial<Record<RoadPosition, TireOnRoad>>>): TiresApart | null => {
  const named = Object.entries(tires) as [RoadPosition, TireOnRoad][]
  if (named.length < 2) return null
  const depths = named.map(([, { tread }]) => inMillimeters(tread))
  const deepest = Math.max(...depths)
  const treadApart = millimeters(deepest - Math.min(...depths))
  const around = named.flatMap(([, { size, tread }]) =>
    size === null ? [] : [circumference(size) - 2 * Math.PI * (deepest - inMillimeters(tread))],
  )
  const aroundApart =
    around.length < named.length ? null : millimeters(Math.max(...around) - Math.min(...around))
  return {
    wheels: inReadingOrder(named.map(([wheel]) => wheel)) as RoadPosition[],
    treadApart,
    aroundApart,
    isTreadOver: treadApart > mostTreadApart + slightest,
    isAroundOver: aroundApart === null ? null : aroundApart > mostAroundApart + slightest,
  }
}
