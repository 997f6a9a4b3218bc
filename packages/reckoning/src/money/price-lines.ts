import type { EstimateLine, LineCode } from '../estimate.ts'
import { type SpecificationSheet, sensorOf, tiresOf } from '../sheet.ts'
import { readTireSize } from '../tire/read-tire-size.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'
import { extendedCents } from './cents.ts'
import type { PriceList } from './price-list.ts'
import type { SoldItem } from './sold-items.ts'

type Line = Pick<
  EstimateLine,
  'lineKey' | 'kind' | 'priceCode' | 'taxClass' | 'quantityHundredths' | 'unitCents'
> & {
  readonly code: LineCode
} & Partial<Pick<EstimateLine, 'wheels' | 'sensor'>>

const lineOf = ({ wheels = [], sensor = null, ...line }: Line): EstimateLine => ({
  ...line,
  words: null,
  wheels: [...wheels],
  sensor,
  amountCents: extendedCents(line.quantityHundredths, line.unitCents),
})

/**
 * Labor by the hour.
 *
 * @formula hours · labor rate, rounded half up to the cent.
 * @units Hundredths of an hour, in whole tenths: 0.3 h is 30.
 * @source Common practice, no source: tenths of an hour; the rate is the shop's own.
 */
export const laborLine = (prices: PriceList, lineKey: string, code: LineCode, hours: number): EstimateLine =>
  lineOf({
    lineKey,
    kind: code === 'look' ? 'look' : 'labor',
    code,
    priceCode: 'labor',
    taxClass: 'labor',
    quantityHundredths: hours,
    unitCents: prices.laborCentsPerHour,
  })

/**
 * Demount, mount and balance of each wheel, at the price of its own tire's profile.
 *
 * @source The shop's own price list.
 */
export const wheelServiceLines = (
  prices: PriceList,
  sheet: SpecificationSheet,
  wheels: readonly WheelPosition[],
): EstimateLine[] => {
  const low = wheels.filter((wheel) => isLowProfile(prices, sheet, wheel))
  const usual = wheels.filter((wheel) => !low.includes(wheel))
  return [
    ...eachWheel('wheel-service', 'labor', prices.prices.wheelService, usual),
    ...eachWheel('wheel-service-low', 'labor', prices.prices.wheelServiceLowProfile, low),
  ]
}

/** 205/55R16 has the aspect ratio 55; a size without one, as 31x10.5R15LT, is not low. */
const isLowProfile = (prices: PriceList, sheet: SpecificationSheet, wheel: WheelPosition): boolean => {
  const size = readTireSize(tiresOf(sheet)?.[axleOf(wheel)]?.size ?? '')
  return size.ok && size.value.kind === 'metric' && size.value.aspectPercent <= prices.lowProfileAspect
}

/**
 * Sensors at the price of their frequency and stem.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const sensorLine = (
  prices: PriceList,
  sheet: SpecificationSheet,
  wheels: readonly WheelPosition[],
): EstimateLine => {
  const frequencyMHz = sensorOf(sheet)?.frequencyMHz ?? 0
  const stem = sensorOf(sheet)?.stem ?? 'snap-in'
  const unit =
    frequencyMHz >= 2_000
      ? prices.prices.sensorHighBand
      : stem === 'clamp-in'
        ? prices.prices.sensorClampIn
        : prices.prices.sensorSnapIn
  return {
    ...flat('sensor', 'sensor', 'parts', unit, wheels, 'part'),
    sensor: { frequencyMHz, stem },
  }
}

/**
 * Service kits or rubber stems, one a valve.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const kitLine = (
  prices: PriceList,
  valve: 'snap-in' | 'clamp-in' | 'plain',
  wheels: readonly WheelPosition[],
): EstimateLine =>
  valve === 'clamp-in'
    ? flat('kit', 'kit-clamp-in', 'parts', prices.prices.kitClampIn, wheels, 'kit')
    : flat('kit', 'kit-rubber', 'parts', prices.prices.kitSnapIn, wheels, 'kit')

/**
 * Finding a leak and looking inside the tire. Nobody knows yet what closes the leak, so a hole has no price here.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const leakSearchLines = ({ prices }: PriceList, wheel: WheelPosition): EstimateLine[] => [
  flat('repair-labor', 'leak-search', 'labor', prices.repairLabor, [wheel]),
  noChargeLine('repair-after-look', 'repair-after-look'),
]

/**
 * Plug and patch of the holes that the look inside has measured: the work and one unit for each.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const punctureLines = ({ prices }: PriceList, wheel: WheelPosition, holes: number): EstimateLine[] => [
  ...(prices.punctureLabor === undefined
    ? []
    : [times(holes, flat('puncture-labor', 'puncture-labor', 'labor', prices.punctureLabor, [wheel]))]),
  times(holes, flat('repair-unit', 'repair-unit', 'parts', prices.repairUnit, [wheel], 'part')),
]

const times = (count: number, line: EstimateLine): EstimateLine => ({
  ...line,
  quantityHundredths: line.quantityHundredths * count,
  amountCents: extendedCents(line.quantityHundredths * count, line.unitCents),
})

/**
 * Tires, with the fee for the disposal of the old ones; none where the shop has no price for it.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const tireLines = ({ prices }: PriceList, wheels: readonly WheelPosition[]): EstimateLine[] =>
  prices.tire === undefined
    ? []
    : [
        flat('tire', 'tire', 'tire', prices.tire, wheels, 'part'),
        flat('tire-disposal', 'tire-disposal', 'fee', prices.tireDisposal ?? 0, wheels, 'fee'),
      ]

/**
 * Tires of the price book by their size, in the book's words, with the fee for the disposal of the old ones.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const tireItemLine = (
  { prices }: PriceList,
  { key, words, cents }: SoldItem,
  wheels: readonly WheelPosition[],
): EstimateLine[] => [
  {
    ...flat('tire', 'tire', 'tire', cents, wheels, 'part'),
    code: null,
    words,
    priceCode: `item.${key}`,
  },
  flat('tire-disposal', 'tire-disposal', 'fee', prices.tireDisposal ?? 0, wheels, 'fee'),
]

/**
 * Renewing damaged fasteners of one wheel: the work, and one stud with its nut. None where this shop has no price for it.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const fastenerLines = ({ prices }: PriceList, wheel: WheelPosition): EstimateLine[] =>
  prices.fastener === undefined || prices.fastenerLabor === undefined
    ? []
    : [
        flat('fastener-labor', 'fastener-labor', 'labor', prices.fastenerLabor, [wheel]),
        flat('fastener-parts', 'fastener-parts', 'parts', prices.fastener, [wheel], 'part'),
      ]

/**
 * The fee for the disposal of old sensors, shown as a fee and never inside labor.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const disposalLine = (prices: PriceList, wheels: readonly WheelPosition[]): EstimateLine =>
  flat('sensor-disposal', 'sensor-disposal', 'fee', prices.prices.sensorDisposal, wheels, 'fee')

/**
 * Work that is printed though nothing is charged for it.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const noChargeLine = (lineKey: string, code: LineCode): EstimateLine =>
  lineOf({
    lineKey,
    kind: 'no-charge',
    code,
    priceCode: 'no-charge',
    taxClass: 'none',
    quantityHundredths: 100,
    unitCents: 0,
  })

/**
 * A fee as a line of its own.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const feeLine = (code: 'supplies', cents: number): EstimateLine =>
  lineOf({
    lineKey: code,
    kind: 'fee',
    code,
    priceCode: code,
    taxClass: 'fee',
    quantityHundredths: 100,
    unitCents: cents,
  })

const eachWheel = (
  code: 'wheel-service' | 'wheel-service-low',
  taxClass: EstimateLine['taxClass'],
  unitCents: number,
  wheels: readonly WheelPosition[],
): EstimateLine[] => (wheels.length > 0 ? [flat(code, code, taxClass, unitCents, wheels)] : [])

const flat = (
  lineKey: string,
  code: LineCode,
  taxClass: EstimateLine['taxClass'],
  unitCents: number,
  wheels: readonly WheelPosition[],
  kind: EstimateLine['kind'] = 'labor',
): EstimateLine =>
  lineOf({
    lineKey,
    kind,
    code,
    wheels: [...wheels],
    priceCode: lineKey,
    taxClass,
    quantityHundredths: wheels.length * 100,
    unitCents,
  })
