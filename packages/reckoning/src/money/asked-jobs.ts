import { patternMoves, RotationPattern } from '../rotation/rotation-pattern.ts'
import { sheetDoubts } from '../rotation/sheet-doubts.ts'
import { relearnOf, type SpecificationSheet, sensorOf } from '../sheet.ts'
import { inReadingOrder, type RoadPosition, type WheelPosition } from '../wheels.ts'
import type { PriceList } from './price-list.ts'
import type { SoldItem } from './sold-items.ts'

/** A job that the customer asks for, whatever the findings say. `tire`: which one; `null`: the book's one price. */
export type AskedJob =
  | { readonly kind: 'rotation'; readonly pattern: RotationPattern }
  | { readonly kind: 'tires'; readonly wheels: readonly WheelPosition[]; readonly tire: SoldItem | null }
  | { readonly kind: 'stems' | 'sensors'; readonly wheels: readonly WheelPosition[] }
  | { readonly kind: 'torque-again'; readonly wheels: readonly RoadPosition[] }
  | { readonly kind: 'season' | 'spare' | 'pressures' | 'reset' | 'relearn' }

export type AskedKind = AskedJob['kind']

/**
 * The jobs that this shop has a price for and that this vehicle can have, in the order in which they are offered.
 *
 * @limits A relearn needs sensors, a reset a system without them, and the spare's job a spare.
 * @source This program's own rule.
 */
export const askedKinds = (
  { prices, hours, items = [] }: PriceList,
  sheet: SpecificationSheet,
): AskedKind[] => {
  const sold: Readonly<Record<AskedKind, boolean>> = {
    rotation: hours.rotation !== undefined && patternsFor(sheet).length > 0,
    tires: prices.tire !== undefined || items.some(({ kind }) => kind === 'tire'),
    season: hours.season !== undefined,
    sensors: sheet.system === 'direct' && sensorOf(sheet) !== null,
    stems: true,
    spare: hours.spare !== undefined && sheet.spare !== 'none',
    pressures: hours.pressures !== undefined,
    'torque-again': hours.torqueAgain !== undefined,
    relearn: sheet.system === 'direct',
    reset: sheet.system === 'indirect',
  }
  return (Object.keys(sold) as AskedKind[]).filter((kind) => sold[kind])
}

/**
 * The patterns by which a vehicle's wheels can be rotated, as far as its sheet says. The vehicle maker's pattern governs.
 *
 * @source Common practice, no source, as in `sheetDoubts`.
 */
export const patternsFor = (sheet: SpecificationSheet): RotationPattern[] =>
  RotationPattern.options.filter((pattern) => sheetDoubts(patternMoves(pattern), sheet).length === 0)

/**
 * What a vehicle needs after its own wheels changed places: a relearn where it does not find the places by itself, a reset
 * where it has no sensors.
 *
 * @source Common practice, no source. The vehicle maker's procedure governs.
 */
export const afterMoving = (sheet: SpecificationSheet): 'relearn' | 'reset' | null => {
  if (sheet.system === 'indirect') return 'reset'
  return sheet.system === 'direct' && !sheet.locatesWheels && relearnOf(sheet) !== null ? 'relearn' : null
}

/**
 * How an asked job is named in the estimate, so that the next version knows it again.
 *
 * @source This program's own rule.
 */
export const askedKey = (job: AskedJob): string =>
  ['asked', job.kind, ...('wheels' in job ? [inReadingOrder(job.wheels).join('-')] : [])].join('.')
