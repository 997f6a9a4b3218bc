import type { EstimateLine, Work } from '../estimate.ts'
import { type SpecificationSheet, sensorOf } from '../sheet.ts'
import type { WheelPosition } from '../wheels.ts'
import { disposalLine, laborLine, noChargeLine, sensorLine, wheelServiceLines } from './price-lines.ts'
import type { PriceList } from './price-list.ts'
import { usualStem } from './stem-of.ts'

/**
 * The works of new sensors: each is fitted, the vehicle learns them, and the pressures are set.
 *
 * @source This program's own rule.
 */
export const sensorWorks = (sheet: SpecificationSheet, wheels: readonly WheelPosition[]): Work[] => [
  ...wheels.map(
    (wheel): Work => ({
      kind: 'fit-sensor',
      wheel,
      valve: sensorOf(sheet)?.stem ?? usualStem,
      identity: 'new',
    }),
  ),
  { kind: 'relearn' },
  { kind: 'set-pressures' },
]

/**
 * The lines of new sensors. `demounted`: the wheels whose tire is taken off for it and by nothing else.
 *
 * @units Cents; the relearn in hours, longer with each more sensor.
 * @source The shop's own price list.
 */
export const sensorLines = (
  prices: PriceList,
  sheet: SpecificationSheet,
  wheels: readonly WheelPosition[],
  demounted: readonly WheelPosition[],
): EstimateLine[] => [
  sensorLine(prices, sheet, wheels),
  ...wheelServiceLines(prices, sheet, demounted),
  laborLine(
    prices,
    'relearn',
    'program-and-relearn',
    prices.hours.relearnFirst + prices.hours.relearnEachMore * (wheels.length - 1),
  ),
  disposalLine(prices, wheels),
  noChargeLine('pressures', 'pressures'),
]
