import type { EstimateLine } from '../estimate.ts'
import type { SpecificationSheet } from '../sheet.ts'
import { readTireSize } from '../tire/read-tire-size.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'
import { extendedCents } from './cents.ts'
import type { PriceList } from './price-list.ts'

type LineWords = Pick<EstimateLine, 'lineKey' | 'kind' | 'words' | 'priceCode' | 'taxClass'> & {
  readonly quantityHundredths: number
  readonly unitCents: number
}

const lineOf = (line: LineWords): EstimateLine => ({
  ...line,
  amountCents: extendedCents(line.quantityHundredths, line.unitCents),
})

/**
 * Labor by the hour.
 *
 * @formula hours · labor rate, rounded half up to the cent.
 * @units Hundredths of an hour, in whole tenths: 0.3 h is 30.
 * @source Common practice, no source: tenths of an hour; the rate is the shop's own.
 */
export const laborLine = (prices: PriceList, lineKey: string, words: string, hours: number): EstimateLine =>
  lineOf({
    lineKey,
    kind: lineKey === 'look' ? 'look' : 'labor',
    words,
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
    ...(usual.length > 0
      ? [
          flat(
            'wheel-service',
            'Demount, mount and balance',
            'labor',
            prices.prices.wheelService,
            usual.length,
          ),
        ]
      : []),
    ...(low.length > 0
      ? [
          flat(
            'wheel-service-low',
            'Demount, mount and balance, low profile',
            'labor',
            prices.prices.wheelServiceLowProfile,
            low.length,
          ),
        ]
      : []),
  ]
}

/** 205/55R16 has the aspect ratio 55; a size without one, as 31x10.5R15LT, is not low. */
const isLowProfile = (prices: PriceList, sheet: SpecificationSheet, wheel: WheelPosition): boolean => {
  const size = readTireSize(sheet.tire[axleOf(wheel)]?.size ?? '')
  return size.ok && size.value.kind === 'metric' && size.value.aspectPercent <= prices.lowProfileAspect
}

/**
 * Sensors at the price of their frequency and stem.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const sensorLine = (prices: PriceList, sheet: SpecificationSheet, count: number): EstimateLine => {
  const megahertz = sheet.sensor?.frequencyMHz ?? 0
  const stem = sheet.sensor?.stem ?? 'snap-in'
  const unit =
    megahertz >= 2_000
      ? prices.prices.sensorHighBand
      : stem === 'clamp-in'
        ? prices.prices.sensorClampIn
        : prices.prices.sensorSnapIn
  return flat(
    'sensor',
    `Wheel sensor, ${megahertz} MHz, ${stem}, with its stem parts`,
    'parts',
    unit,
    count,
    'part',
  )
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
  count: number,
): EstimateLine =>
  flat(
    'kit',
    valve === 'clamp-in' ? 'Stem service kit, clamp-in' : 'Rubber stem and core',
    'parts',
    valve === 'clamp-in' ? prices.prices.kitClampIn : prices.prices.kitSnapIn,
    count,
    'kit',
  )

/**
 * Finding and repairing a leak from the inside.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const repairLines = (prices: PriceList): EstimateLine[] => [
  flat(
    'repair-labor',
    'Find the leak, demount, repair from the inside, mount, balance',
    'labor',
    prices.prices.repairLabor,
    1,
  ),
  flat('repair-unit', 'Combined plug and patch', 'parts', prices.prices.repairUnit, 1, 'part'),
]

/**
 * The fee for the disposal of old sensors, shown as a fee and never inside labor.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const disposalLine = (prices: PriceList, count: number): EstimateLine =>
  flat('sensor-disposal', 'Disposal of the old sensor', 'fee', prices.prices.sensorDisposal, count, 'fee')

/**
 * Work that is printed though nothing is asked for it.
 *
 * @units Cents.
 * @source The shop's own price list.
 */
export const noChargeLine = (lineKey: string, words: string): EstimateLine =>
  lineOf({
    lineKey,
    kind: 'no-charge',
    words,
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
export const feeLine = (lineKey: string, words: string, cents: number): EstimateLine =>
  lineOf({
    lineKey,
    kind: 'fee',
    words,
    priceCode: lineKey,
    taxClass: 'fee',
    quantityHundredths: 100,
    unitCents: cents,
  })

const flat = (
  lineKey: string,
  words: string,
  taxClass: EstimateLine['taxClass'],
  unitCents: number,
  count: number,
  kind: EstimateLine['kind'] = 'labor',
): EstimateLine =>
  lineOf({ lineKey, kind, words, priceCode: lineKey, taxClass, quantityHundredths: count * 100, unitCents })
