import type { BundleTitle, EstimateLine, LineCode, Work } from '../estimate.ts'
import type { SpecificationSheet } from '../sheet.ts'
import { inReadingOrder, type WheelPosition } from '../wheels.ts'
import { type AskedJob, afterMoving, askedKey } from './asked-jobs.ts'
import type { OfferedBundle } from './offer.ts'
import {
  kitLine,
  laborLine,
  noChargeLine,
  tireItemLine,
  tireLines,
  wheelServiceLines,
} from './price-lines.ts'
import type { PriceList } from './price-list.ts'
import { sensorLines, sensorWorks } from './sensor-lines.ts'
import { stemOf } from './stem-of.ts'

type Parts = { readonly title: BundleTitle; readonly works: Work[]; readonly lines: EstimateLine[] }

/**
 * A job that the customer asks for, with the works that bring its steps and the lines of its price. Nothing of it is a
 * matter of safety: the findings decide that. `opened`: wheels whose tire is open for work that was agreed on before; nobody pays
 * twice for taking it off and putting it on.
 *
 * @units Cents; labor in hundredths of an hour.
 * @source This program's own rule; the prices are the shop's own.
 */
export const askedBundle = (
  job: AskedJob,
  prices: PriceList,
  sheet: SpecificationSheet,
  opened: readonly WheelPosition[] = [],
): OfferedBundle => ({
  bundleKey: askedKey(job),
  findings: [],
  safety: false,
  cautions: [],
  alternativeTo: null,
  ...partsOf(job, prices, sheet, opened),
})

const setPressures: Work = { kind: 'set-pressures' }
const pressuresLine = () => noChargeLine('pressures', 'pressures')

const partsOf = (
  job: AskedJob,
  prices: PriceList,
  sheet: SpecificationSheet,
  opened: readonly WheelPosition[],
): Parts => {
  const { hours } = prices
  switch (job.kind) {
    case 'rotation': {
      const then = afterMoving(sheet)
      return {
        title: 'rotation',
        works: [{ kind: 'rotate', pattern: job.pattern }, ...learned(then), setPressures],
        lines: [
          laborLine(prices, 'rotation', 'rotation-labor', hours.rotation ?? 0),
          ...learnLines(prices, then),
          pressuresLine(),
        ],
      }
    }
    case 'season': {
      // The other set has other IDs, also where a vehicle finds the places by itself.
      const then = sheet.system === 'direct' ? 'relearn' : afterMoving(sheet)
      return {
        title: 'season',
        works: [{ kind: 'swap-wheels' }, ...learned(then), setPressures],
        lines: [
          laborLine(prices, 'season', 'season-labor', hours.season ?? 0),
          ...learnLines(prices, then),
          pressuresLine(),
        ],
      }
    }
    case 'tires':
      return tires(job, prices, sheet, opened)
    case 'sensors': {
      const wheels = inReadingOrder(job.wheels)
      return {
        title: 'sensor',
        works: sensorWorks(sheet, wheels),
        lines: sensorLines(prices, sheet, wheels, closedOf(wheels, opened)),
      }
    }
    case 'stems': {
      const wheels = inReadingOrder(job.wheels)
      return {
        title: 'stem',
        works: [...wheels.map((wheel) => stemWork(sheet, wheel)), setPressures],
        lines: [
          ...wheelServiceLines(prices, sheet, closedOf(wheels, opened)),
          ...kitLines(prices, sheet, wheels),
          pressuresLine(),
        ],
      }
    }
    case 'spare':
      return {
        title: 'spare',
        works: [stemWork(sheet, 'SP'), setPressures],
        lines: [
          laborLine(prices, 'spare', 'spare-labor', hours.spare ?? 0),
          ...kitLines(prices, sheet, ['SP']),
          pressuresLine(),
        ],
      }
    case 'torque-again':
      return {
        title: 'torque-again',
        works: inReadingOrder(job.wheels).flatMap((wheel): Work[] =>
          wheel === 'SP' ? [] : [{ kind: 'torque-again', wheel }],
        ),
        lines: [timeLine(prices, 'torque-again', hours.torqueAgain, 'torque-again-labor', 'torque-again')],
      }
    case 'pressures':
      return {
        title: 'pressures',
        works: [setPressures],
        lines: [timeLine(prices, 'pressures', hours.pressures, 'pressures-labor', 'pressures-alone')],
      }
    case 'relearn':
    case 'reset':
      return {
        title: job.kind,
        works: [...learned(job.kind), setPressures],
        lines: [...learnLines(prices, job.kind), pressuresLine()],
      }
  }
}

const closedOf = (wheels: readonly WheelPosition[], opened: readonly WheelPosition[]) =>
  wheels.filter((wheel) => !opened.includes(wheel))

/** New tires on the wheels that are there: their sensors stay, their stems get new parts. */
const tires = (
  { wheels: asked, tire }: AskedJob & { readonly kind: 'tires' },
  prices: PriceList,
  sheet: SpecificationSheet,
  opened: readonly WheelPosition[],
): Parts => {
  const wheels = inReadingOrder(asked)
  return {
    title: 'tires',
    works: [
      ...wheels.flatMap((wheel): Work[] => [{ kind: 'fit-tire', wheel }, stemWork(sheet, wheel)]),
      setPressures,
    ],
    lines: [
      ...(tire === null ? tireLines(prices, wheels) : tireItemLine(prices, tire, wheels)),
      ...wheelServiceLines(prices, sheet, closedOf(wheels, opened)),
      ...kitLines(prices, sheet, wheels),
      pressuresLine(),
    ],
  }
}

/** A spare to which nothing listens has a plain stem. */
const valveAt = (sheet: SpecificationSheet, wheel: WheelPosition) =>
  wheel === 'SP' && !sheet.spareMonitored ? 'plain' : stemOf(sheet)

const stemWork = (sheet: SpecificationSheet, wheel: WheelPosition): Work => ({
  kind: 'service-stem',
  wheel,
  valve: valveAt(sheet, wheel),
})

const kitLines = (
  prices: PriceList,
  sheet: SpecificationSheet,
  wheels: readonly WheelPosition[],
): EstimateLine[] =>
  (['clamp-in', 'snap-in', 'plain'] as const).flatMap((valve) => {
    const alike = wheels.filter((wheel) => valveAt(sheet, wheel) === valve)
    return alike.length === 0 ? [] : [{ ...kitLine(prices, valve, alike), lineKey: `kit.${valve}` }]
  })

const learned = (then: 'relearn' | 'reset' | null): Work[] => (then === null ? [] : [{ kind: then }])

const learnLines = (prices: PriceList, then: 'relearn' | 'reset' | null): EstimateLine[] => {
  if (then === null) return []
  const time = then === 'relearn' ? prices.hours.relearnFirst : prices.hours.reset
  return [laborLine(prices, then, then, time)]
}

/** Work by the hour, or printed without a charge where the shop asks none. */
const timeLine = (
  prices: PriceList,
  lineKey: string,
  hours: number | undefined,
  charged: LineCode,
  free: LineCode,
): EstimateLine => (hours ? laborLine(prices, lineKey, charged, hours) : noChargeLine(lineKey, free))
