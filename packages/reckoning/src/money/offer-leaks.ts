import type { CautionReference } from '../cautions/caution-reference.ts'
import { customerCaution } from '../cautions/customer-cautions.ts'
import type { Finding } from '../diagnosis/diagnosis.ts'
import { inReadingOrder, type WheelPosition } from '../wheels.ts'
import type { OfferedBundle, OfferOf } from './offer.ts'
import { dangerousTires } from './offer-tires.ts'
import { kitLine, leakSearchLines, noChargeLine, punctureLines } from './price-lines.ts'
import { stemOf } from './stem-of.ts'

/**
 * To find each leak and look inside its tire: what can be authorized before anybody has looked. A search that the
 * customer has authorized stays as it was answered, whatever the look found.
 *
 * @source This program's own rule; the order of look, verdict and price: the tire trade association's repair procedure,
 * from memory.
 */
export const leakBundles = (of: OfferOf): OfferedBundle[] => {
  const { searched, repairable } = of.opened
  const settled = [...dangerousTires(of), ...repairable.map(({ wheel }) => wheel)]
  const open = inReadingOrder(leaking(of).flatMap(({ wheels }) => wheels)).filter(
    (wheel) => !settled.includes(wheel),
  )
  return inReadingOrder([...open, ...searched.map(({ wheel }) => wheel)]).map((wheel) =>
    searchBundle(
      of,
      wheel,
      searched.find((one) => one.wheel === wheel)?.findings ?? [
        ...codesAt(of, wheel),
        ...stemCodesAt(of, [wheel]),
      ],
    ),
  )
}

/**
 * The repair of each tire whose holes may be repaired, by the verdict on record; never before there is one.
 *
 * @source This program's own rule.
 */
export const punctureBundles = (of: OfferOf): OfferedBundle[] =>
  of.opened.repairable
    .filter(({ wheel }) => !dangerousTires(of).includes(wheel) && codesAt(of, wheel).length > 0)
    .map(({ wheel, holes }) => ({
      bundleKey: `puncture.${wheel}`,
      title: 'puncture',
      findings: codesAt(of, wheel),
      safety: true,
      cautions: cautionsFor(of, wheel, codesAt(of, wheel)),
      alternativeTo: null,
      works: [{ kind: 'repair-puncture', wheel }],
      lines: punctureLines(of.prices, wheel, holes),
    }))

const searchBundle = (of: OfferOf, wheel: WheelPosition, findings: readonly string[]): OfferedBundle => {
  const valve = stemOf(of.sheet)
  return {
    bundleKey: `leak.${wheel}`,
    title: 'leak-search',
    findings: [...findings],
    safety: true,
    cautions: cautionsFor(of, wheel, findings),
    alternativeTo: null,
    works: [{ kind: 'find-leak', wheel }, { kind: 'service-stem', wheel, valve }, { kind: 'set-pressures' }],
    lines: [
      ...leakSearchLines(of.prices, wheel),
      kitLine(of.prices, valve, [wheel]),
      noChargeLine('pressures', 'pressures'),
    ],
  }
}

const leaking = ({ diagnosis }: OfferOf): Finding[] =>
  diagnosis.findings.filter(({ offers }) => offers.includes('leak-find'))

const codesAt = (of: OfferOf, wheel: WheelPosition): string[] => [
  ...new Set(
    leaking(of)
      .filter(({ wheels }) => wheels.includes(wheel))
      .map(({ code }) => code),
  ),
]

/**
 * What is wrong with stems of these wheels. A search for a leak and a new sensor renew the stem's parts, so they are the
 * remedy of such a finding as well.
 *
 * @source This program's own rule.
 */
export const stemCodesAt = ({ diagnosis }: OfferOf, at: readonly WheelPosition[]): string[] =>
  diagnosis.findings
    .filter(({ offers }) => offers.includes('stem') || offers.includes('service-kit'))
    .filter(({ wheels }) => wheels.length > 0 && wheels.every((wheel) => at.includes(wheel)))
    .map(({ code }) => code)

/**
 * What a customer who leaves a leak as it is must have read. A tire that was driven low may be damaged inside: that takes the
 * place of the leak's own caution. Sealant in the tire and a failing stem have one besides.
 */
const cautionsFor = ({ diagnosis }: OfferOf, wheel: WheelPosition, findings: readonly string[]) => [
  customerCaution(findings.includes('run-low-damage-possible') ? 'CT-14' : 'CT-16'),
  ...(diagnosis.findings.some(({ code, wheels }) => code === 'sealant-inside' && wheels.includes(wheel))
    ? [customerCaution('CT-08')]
    : []),
  ...stemCautions(findings),
]

/**
 * A cracked or leaking stem is none to drive on, whatever the work is that would renew it.
 *
 * @source This program's own rule.
 */
export const stemCautions = (findings: readonly string[]): CautionReference[] =>
  findings.includes('stem-leaking') ? [customerCaution('CT-18')] : []
