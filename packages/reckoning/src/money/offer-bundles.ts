import { sensorOf } from '@bayledger/reckoning/sheet'
import type { CautionReference } from '../cautions/caution-reference.ts'
import { type CustomerCautionNumber, customerCaution } from '../cautions/customer-cautions.ts'
import type { Finding, Offer } from '../diagnosis/diagnosis.ts'
import type { Bundle, EstimateLine } from '../estimate.ts'
import { inReadingOrder, roadPositions, type WheelPosition } from '../wheels.ts'
import type { OfferedBundle, OfferOf } from './offer.ts'
import { fastenerBundles } from './offer-fasteners.ts'
import { leakBundles, punctureBundles, stemCautions, stemCodesAt } from './offer-leaks.ts'
import {
  dangerousTires,
  dueTireBundles,
  openedTireBundles,
  tiresOfferedAnew,
  urgentTireBundles,
} from './offer-tires.ts'
import { kitLine, laborLine, noChargeLine, wheelServiceLines } from './price-lines.ts'
import { sensorLines, sensorWorks } from './sensor-lines.ts'
import { stemOf } from './stem-of.ts'

/**
 * What may be offered for the findings, each as lines that only make sense together: nobody can say Yes to a
 * sensor and No to the relearn it needs. Where a finding offers no part, no bundle holds one. Offers that this
 * shop has no price for (work done elsewhere) are left to the advisor.
 *
 * @source This program's own rule: the parts that the findings offer and no others.
 */
export const offerBundles = (of: OfferOf): OfferedBundle[] => {
  const atWheels = [
    ...urgentTireBundles(of),
    ...sensorBundles(of),
    ...leakBundles(of),
    ...stemBundles(of),
    ...fastenerBundles(of),
    // What follows from a look inside comes last: the fees of what was answered before stay as they were.
    ...punctureBundles(of),
    ...openedTireBundles(of),
  ]
  const bundles = [...atWheels, ...dueTireBundles(of, openedBy(atWheels))]
  return [...bundles, ...settingBundles(of, atWheels), lookBundle(of)]
}

/**
 * The look is a bundle of its own: the customer agreed to it before anybody looked, and pays for it whatever they answer
 * to the rest.
 */
const lookBundle = (of: OfferOf): OfferedBundle => ({
  bundleKey: 'look',
  title: 'look',
  findings: [],
  safety: false,
  cautions: [],
  alternativeTo: null,
  works: [{ kind: 'look' }],
  lines: [lookLine(of)],
})

const openedBy = (bundles: readonly Bundle[]): WheelPosition[] =>
  bundles.flatMap(({ works }) => works.flatMap((work) => ('wheel' in work ? [work.wheel] : [])))

const lookLine = ({ prices, look }: OfferOf): EstimateLine =>
  look === 'charged'
    ? laborLine(prices, 'look', 'look', prices.hours.look)
    : noChargeLine('look', look === 'waived' ? 'look-waived' : 'look-waived-with-work')

const offering = ({ diagnosis }: OfferOf, offer: Offer): Finding[] =>
  diagnosis.findings.filter((finding) => finding.offers.includes(offer))

const wheelsOf = (findings: readonly Finding[]): WheelPosition[] =>
  inReadingOrder(findings.flatMap(({ wheels }) => wheels))

const sensorBundles = (of: OfferOf): OfferedBundle[] => {
  const { sheet } = of
  const findings = offering(of, 'sensor')
  const wheels = wheelsOf(findings)
  if (wheels.length === 0 || !sensorOf(sheet)) return []
  const one = fitSensors(of, wheels, findings, `sensor.${wheels.join('-')}`, null)
  const set = offering(of, 'set-of-four')
  const four = inReadingOrder([...roadPositions, ...wheels])
  return set.length === 0
    ? [one]
    : [one, fitSensors(of, four, [...findings, ...set], 'sensor.set-of-four', one.bundleKey)]
}

const fitSensors = (
  of: OfferOf,
  wheels: readonly WheelPosition[],
  findings: readonly Finding[],
  bundleKey: string,
  alternativeTo: string | null,
): OfferedBundle => {
  const { sheet, prices } = of
  // A wheel that gets another tire is demounted, mounted and balanced once.
  const demounted = wheels.filter((wheel) => !tiresOfferedAnew(of).includes(wheel))
  const codes = [...new Set([...codesOf(findings), ...stemCodesAt(of, wheels)])]
  return {
    bundleKey,
    title: alternativeTo === null ? 'sensor' : 'set-of-four',
    findings: codes,
    safety: true,
    // A No to the set leaves the warning alone where the one sensor is authorized.
    cautions:
      alternativeTo === null ? [...shownBefore('CT-01'), ...stemCautions(codes)] : shownBefore('CT-05'),
    alternativeTo,
    works: sensorWorks(sheet, wheels),
    lines: sensorLines(prices, sheet, wheels, demounted),
  }
}

const stemBundles = (of: OfferOf): OfferedBundle[] => {
  const findings = [...offering(of, 'stem'), ...offering(of, 'service-kit')]
  const covered = new Set([
    ...wheelsOf(offering(of, 'sensor')),
    ...wheelsOf(offering(of, 'leak-find')),
    ...of.opened.searched.map(({ wheel }) => wheel),
    ...dangerousTires(of),
  ])
  return wheelsOf(findings)
    .filter((wheel) => !covered.has(wheel))
    .map((wheel) => {
      const here = findings.filter(({ wheels }) => wheels.includes(wheel))
      const valve = stemOf(of.sheet)
      return {
        bundleKey: `stem.${wheel}`,
        title: 'stem',
        findings: codesOf(here),
        safety: true,
        // One that is corroded holds air yet.
        cautions: shownBefore(codesOf(here).includes('stem-leaking') ? 'CT-18' : 'CT-17'),
        alternativeTo: null,
        works: [{ kind: 'service-stem', wheel, valve }, { kind: 'set-pressures' }],
        lines: [
          ...wheelServiceLines(of.prices, of.sheet, [wheel]),
          kitLine(of.prices, valve, [wheel]),
          noChargeLine('pressures', 'pressures'),
        ],
      }
    })
}

/** Relearn, reset and pressures: only where no bundle above already brings them along. */
const settingBundles = (of: OfferOf, before: readonly Bundle[]): OfferedBundle[] => {
  const { prices } = of
  const hasSensor = wheelsOf(offering(of, 'sensor')).length > 0 && sensorOf(of.sheet) !== null
  const relearn = [...offering(of, 'relearn'), ...offering(of, 'reprogram')]
  const reset = offering(of, 'reset')
  const pressures = offering(of, 'pressure-set')
  const usual = { safety: false, cautions: shownBefore(), alternativeTo: null }
  if (!hasSensor && relearn.length > 0)
    return [
      {
        ...usual,
        bundleKey: 'relearn',
        title: 'relearn',
        findings: codesOf([...relearn, ...pressures]),
        safety: true,
        cautions: shownBefore('CT-01'),
        works: [{ kind: 'relearn' }, { kind: 'set-pressures' }],
        lines: [
          laborLine(prices, 'relearn', 'relearn', prices.hours.relearnFirst),
          noChargeLine('pressures', 'pressures'),
        ],
      },
    ]
  if (reset.length > 0)
    return [
      {
        ...usual,
        bundleKey: 'reset',
        title: 'reset',
        findings: codesOf([...reset, ...pressures]),
        works: [{ kind: 'reset' }, { kind: 'set-pressures' }],
        lines: [
          laborLine(prices, 'reset', 'reset', prices.hours.reset),
          noChargeLine('pressures', 'pressures'),
        ],
      },
    ]
  const elsewhere = before.some(({ works }) => works.some(({ kind }) => kind === 'set-pressures'))
  if (pressures.length === 0 || elsewhere) return []
  return [
    {
      ...usual,
      bundleKey: 'pressures',
      title: 'pressures',
      findings: codesOf(pressures),
      works: [{ kind: 'set-pressures' }],
      lines: [noChargeLine('pressures', 'pressures-alone')],
    },
  ]
}

const codesOf = (findings: readonly Finding[]): string[] => [...new Set(findings.map(({ code }) => code))]

const shownBefore = (...numbers: CustomerCautionNumber[]): CautionReference[] => numbers.map(customerCaution)
