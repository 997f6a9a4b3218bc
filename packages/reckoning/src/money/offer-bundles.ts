import type { Diagnosis, Finding, Offer } from '../diagnosis/diagnosis.ts'
import type { Bundle, EstimateLine, Work } from '../estimate.ts'
import type { SpecificationSheet } from '../sheet.ts'
import { inReadingOrder, roadPositions, type WheelPosition, wheelNames } from '../wheels.ts'
import {
  disposalLine,
  kitLine,
  laborLine,
  noChargeLine,
  repairLines,
  sensorLine,
  wheelServiceLines,
} from './price-lines.ts'
import type { PriceList } from './price-list.ts'

/** A bundle before the supplies fee and the totals are known. */
export type OfferedBundle = Omit<Bundle, 'totals'>

export type OfferOf = {
  readonly diagnosis: Diagnosis
  readonly sheet: SpecificationSheet
  readonly prices: PriceList
  /** Whether the look is charged with the first priced bundle; waived, it stands there at no charge. */
  readonly look: 'charged' | 'waived'
  /** What the customer reads of a finding; the first one of a bundle is its reason. */
  readonly sentenceOf: (finding: Finding) => string
}

/**
 * What may be offered for the findings, each as lines that only make sense together: nobody can say Yes to a
 * sensor and No to the relearn it needs. Where a finding offers no part, no bundle holds one. Offers that this
 * shop has no price for (a tire, a repaired fastener, work done elsewhere) are left to the advisor.
 *
 * @source This program's own rule: the parts that the findings offer and no others.
 */
export const offerBundles = (of: OfferOf): OfferedBundle[] => {
  const bundles = [...sensorBundles(of), ...leakBundles(of), ...stemBundles(of), ...settingBundles(of)]
  const [first, ...rest] = bundles
  if (!first) return of.look === 'charged' ? [lookBundle(of)] : []
  const withLook = (bundle: OfferedBundle): OfferedBundle => ({
    ...bundle,
    lines: [lookLine(of), ...bundle.lines],
  })
  return [
    withLook(first),
    ...rest.map((bundle) => (bundle.alternativeTo === first.bundleKey ? withLook(bundle) : bundle)),
  ]
}

/** Where the findings offer nothing to do, the look itself is what the customer agreed to pay for. */
const lookBundle = (of: OfferOf): OfferedBundle => ({
  bundleKey: 'look',
  title: 'The look itself',
  reason: 'We checked every wheel and the vehicle; the findings name no work to sell.',
  findings: [],
  safety: false,
  caution: null,
  alternativeTo: null,
  works: [{ kind: 'look' }],
  lines: [lookLine(of)],
})

const lookLine = ({ prices, look }: OfferOf): EstimateLine =>
  look === 'charged'
    ? laborLine(prices, 'look', 'Check of every wheel sensor and the vehicle', prices.hours.look)
    : noChargeLine('look', 'Check of every wheel sensor and the vehicle, waived')

const offering = ({ diagnosis }: OfferOf, offer: Offer): Finding[] =>
  diagnosis.findings.filter((finding) => finding.offers.includes(offer))

const wheelsOf = (findings: readonly Finding[]): WheelPosition[] =>
  inReadingOrder(findings.flatMap(({ wheels }) => wheels))

const sensorBundles = (of: OfferOf): OfferedBundle[] => {
  const { sheet } = of
  const findings = offering(of, 'sensor')
  const wheels = wheelsOf(findings)
  if (wheels.length === 0 || !sheet.sensor) return []
  const one = fitSensors(of, wheels, findings, `sensor.${wheels.join('-')}`, null)
  const set = offering(of, 'set-of-four')
  const four = inReadingOrder([...roadPositions, ...wheels])
  return set.length === 0
    ? [one]
    : [one, fitSensors(of, four, [...findings, ...set], 'sensor.set-of-four', one.bundleKey)]
}

const reasonFrom = ({ sentenceOf }: OfferOf, [first]: readonly Finding[]): string =>
  first === undefined ? '' : sentenceOf(first)

const fitSensors = (
  of: OfferOf,
  wheels: readonly WheelPosition[],
  findings: readonly Finding[],
  bundleKey: string,
  alternativeTo: string | null,
): OfferedBundle => {
  const { sheet, prices } = of
  const hours = prices.hours.relearnFirst + prices.hours.relearnEachMore * (wheels.length - 1)
  return {
    bundleKey,
    title: alternativeTo === null ? `New sensor, ${namesOf(wheels)}` : 'New sensors in all wheels',
    reason: reasonFrom(of, findings),
    findings: codesOf(findings),
    safety: true,
    // A No to the set leaves the warning alone where the one sensor is authorized.
    caution: alternativeTo === null ? 'CT-01' : 'CT-05',
    alternativeTo,
    works: [
      ...wheels.map(
        (wheel): Work => ({
          kind: 'fit-sensor',
          wheel,
          valve: sheet.sensor?.stem ?? usualStem,
          identity: 'new',
        }),
      ),
      { kind: 'relearn' },
      { kind: 'set-pressures' },
    ],
    lines: [
      sensorLine(prices, sheet, wheels.length),
      ...wheelServiceLines(prices, sheet, wheels),
      laborLine(prices, 'relearn', 'Program the sensor, make the vehicle learn it', hours),
      disposalLine(prices, wheels.length),
      noChargeLine('pressures', 'All pressures set for the day'),
    ],
  }
}

/** Offered where the sheet does not say which stem its sensors have. */
const usualStem = 'snap-in'

/** The stem of a vehicle's wheels: a plain one only where it listens to no sensor. */
const stemOf = ({ system, sensor }: SpecificationSheet): 'snap-in' | 'clamp-in' | 'plain' =>
  sensor?.stem ?? (system === 'direct' ? usualStem : 'plain')

const leakBundles = (of: OfferOf): OfferedBundle[] => {
  const findings = offering(of, 'leak-find')
  return wheelsOf(findings).map((wheel) => {
    const here = findings.filter(({ wheels }) => wheels.includes(wheel))
    const valve = stemOf(of.sheet)
    return {
      bundleKey: `leak.${wheel}`,
      title: `Find and repair the leak, ${wheelNames[wheel]}`,
      reason: reasonFrom(of, here),
      findings: codesOf(here),
      safety: true,
      caution: 'CT-16',
      alternativeTo: null,
      works: [
        { kind: 'find-leak', wheel },
        { kind: 'service-stem', wheel, valve },
        { kind: 'set-pressures' },
      ],
      lines: [
        ...repairLines(of.prices),
        kitLine(of.prices, valve, 1),
        noChargeLine('pressures', 'All pressures set for the day'),
      ],
    }
  })
}

const stemBundles = (of: OfferOf): OfferedBundle[] => {
  const findings = [...offering(of, 'stem'), ...offering(of, 'service-kit')]
  const covered = new Set([...wheelsOf(offering(of, 'sensor')), ...wheelsOf(offering(of, 'leak-find'))])
  return wheelsOf(findings)
    .filter((wheel) => !covered.has(wheel))
    .map((wheel) => {
      const here = findings.filter(({ wheels }) => wheels.includes(wheel))
      const valve = stemOf(of.sheet)
      return {
        bundleKey: `stem.${wheel}`,
        title: `Renew the valve stem, ${wheelNames[wheel]}`,
        reason: reasonFrom(of, here),
        findings: codesOf(here),
        safety: true,
        caution: 'CT-17',
        alternativeTo: null,
        works: [{ kind: 'service-stem', wheel, valve }, { kind: 'set-pressures' }],
        lines: [
          ...wheelServiceLines(of.prices, of.sheet, [wheel]),
          kitLine(of.prices, valve, 1),
          noChargeLine('pressures', 'All pressures set for the day'),
        ],
      }
    })
}

/** Relearn, reset and pressures: only where no bundle above already brings them along. */
const settingBundles = (of: OfferOf): OfferedBundle[] => {
  const { prices } = of
  const hasSensor = wheelsOf(offering(of, 'sensor')).length > 0 && of.sheet.sensor !== null
  const relearn = [...offering(of, 'relearn'), ...offering(of, 'reprogram')]
  const reset = offering(of, 'reset')
  const pressures = offering(of, 'pressure-set')
  const usual = { safety: false, caution: null, alternativeTo: null } as const
  if (!hasSensor && relearn.length > 0)
    return [
      {
        ...usual,
        bundleKey: 'relearn',
        title: 'Make the vehicle learn its sensors',
        reason: reasonFrom(of, relearn),
        findings: codesOf([...relearn, ...pressures]),
        safety: true,
        caution: 'CT-01',
        works: [{ kind: 'relearn' }, { kind: 'set-pressures' }],
        lines: [
          laborLine(prices, 'relearn', 'Make the vehicle learn its sensors', prices.hours.relearnFirst),
          noChargeLine('pressures', 'All pressures set for the day'),
        ],
      },
    ]
  if (reset.length > 0)
    return [
      {
        ...usual,
        bundleKey: 'reset',
        title: 'Set the pressures and reset the system',
        reason: reasonFrom(of, reset),
        findings: codesOf([...reset, ...pressures]),
        works: [{ kind: 'reset' }, { kind: 'set-pressures' }],
        lines: [
          laborLine(prices, 'reset', 'Reset the tire pressure system', prices.hours.reset),
          noChargeLine('pressures', 'All pressures set for the day'),
        ],
      },
    ]
  const elsewhere =
    hasSensor ||
    wheelsOf([...offering(of, 'leak-find'), ...offering(of, 'stem'), ...offering(of, 'service-kit')]).length >
      0
  if (pressures.length === 0 || elsewhere) return []
  return [
    {
      ...usual,
      bundleKey: 'pressures',
      title: 'Set all pressures for the day',
      reason: reasonFrom(of, pressures),
      findings: codesOf(pressures),
      works: [{ kind: 'set-pressures' }],
      lines: [noChargeLine('pressures', 'All pressures set for the day, no charge')],
    },
  ]
}

const codesOf = (findings: readonly Finding[]): string[] => [...new Set(findings.map(({ code }) => code))]

const namesOf = (wheels: readonly WheelPosition[]): string =>
  wheels.map((wheel) => wheelNames[wheel]).join(' and ')
