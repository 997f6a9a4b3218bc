import type { Evidence } from '../../evidence/evidence-schema.ts'
import { setTarget } from '../../pressure/set-target.ts'
import { metersFromFeet } from '../../units/length-units.ts'
import { inKelvin } from '../../units/temperature-units.ts'
import { type Diagnosis, type Finding, type Offer, partOffers } from '../diagnosis.ts'
import type { FindingCode } from '../finding-codes.ts'

type Holds = (diagnosis: Diagnosis, evidence: Evidence) => boolean

const of = ({ findings }: Diagnosis, code: FindingCode): Finding | undefined =>
  findings.find((finding) => finding.code === code)

const offered = ({ findings }: Diagnosis): Offer[] => findings.flatMap(({ offers }) => offers)

const hasFound = (diagnosis: Diagnosis, ...codes: FindingCode[]): boolean =>
  codes.every((code) => of(diagnosis, code) !== undefined)

const sellsNothing = (diagnosis: Diagnosis): boolean => offered(diagnosis).length === 0

const sellsNoPart = (diagnosis: Diagnosis): boolean =>
  !offered(diagnosis).some((offer) => partOffers.has(offer))

const says = (diagnosis: Diagnosis, code: FindingCode, words: RegExp): boolean =>
  words.test(of(diagnosis, code)?.next ?? '')

const leads = ({ findings }: Diagnosis, code: FindingCode): boolean => findings[0]?.code === code

const near = (value: unknown, wanted: number, within = 0.05): boolean =>
  typeof value === 'number' && Math.abs(value - wanted) <= within

/** What each case's remark asks for beyond the names of its findings, by case. False of a diagnosis that found nothing. */
export const mustHold: Readonly<Record<string, Holds>> = {
  K01: (found) => says(found, 'tire-low', /leak before only filling/) && !offered(found).includes('sensor'),
  K02: (found) => of(found, 'sensor-silent')?.confidence === 'firm',
  K04: (found) =>
    near(of(found, 'cold-morning-margin')?.figures.value, 25.8) &&
    of(found, 'weather-and-seepage')?.because.some(({ says }) => /explains 42 %/.test(says)) === true,
  K05: (found) =>
    near(of(found, 'slow-leak')?.figures.drop, 8.1) && near(of(found, 'slow-leak')?.figures.perDay, 0.9),
  K06: (found) =>
    of(found, 'sensor-reads-wrong')?.figures.sensor === 26 &&
    of(found, 'sensor-reads-wrong')?.figures.value === 32 &&
    says(found, 'sensor-reads-wrong', /^Verify with the master gauge/),
  K08: (found) =>
    hasFound(found, 'gauge-suspect') && !hasFound(found, 'sensor-reads-wrong') && sellsNoPart(found),
  K10: (found) =>
    of(found, 'rotated-without-relearn')?.kind === 'note' &&
    of(found, 'rotated-without-relearn')?.offers.includes('relearn') === true,
  K11: (found) =>
    leads(found, 'axle-pressures-exchanged') &&
    of(found, 'axle-pressures-exchanged')?.holds.includes('relearn') === true &&
    says(found, 'rotated-without-relearn', /^Set pressures by position, then relearn/),
  K13: (found) => says(found, 'id-duplicated', /stored list/),
  K15: (found) =>
    of(found, 'id-not-stored')?.kind === 'cause' && of(found, 'stored-id-unheard')?.offers.length === 0,
  K17: (found) =>
    says(found, 'wheel-from-another-vehicle', /load index, offset, seat and hub bore/) &&
    says(found, 'id-known-elsewhere', /order/),
  K18: (found) =>
    hasFound(found, 'other-wheel-set') &&
    !hasFound(found, 'id-not-stored') &&
    !hasFound(found, 'stored-id-unheard'),
  K19: (found) => offered(found).includes('sensor') && offered(found).includes('set-of-four'),
  K21: (found) => hasFound(found, 'reset-only') && sellsNoPart(found),
  K22: (found) =>
    found.findings.map(({ code }) => code).join() === 'tire-low,set-then-reset' &&
    says(found, 'tire-low', /leak/) &&
    says(found, 'set-then-reset', /^Set all tires, then reset/),
  K24: (found) => hasFound(found, 'malfunction-unexplained') && sellsNoPart(found),
  K25: (found) =>
    of(found, 'interference-suspected')?.confidence === 'likely' &&
    says(found, 'interference-suspected', /drive/),
  K26: (found) => says(found, 'receiver-fault', /^Refer/) && sellsNoPart(found),
  K27: (found) => of(found, 'spare-low')?.figures.label === 35,
  K30: (found) =>
    leads(found, 'learn-mode-open') && says(found, 'learn-mode-open', /^Finish or leave learn mode/),
  K31: (found) =>
    leads(found, 'telltale-dark') &&
    says(found, 'telltale-dark', /^Record it with a photo first/) &&
    found.findings.every(({ customer }) => !/hid|remov|disabl/.test(customer)),
  K33: (found, { surroundings, vehicle }) => {
    const target = (sidewall: number, tire: 'measured' | 'assumed') =>
      setTarget({
        placard: { value: vehicle?.placard?.front ?? 0, unit: 'psi' },
        sidewallMaximum: { value: sidewall, unit: 'psi' },
        outdoor: inKelvin({ value: surroundings?.outdoor ?? 0, unit: 'F' }),
        tire: { kelvin: inKelvin({ value: 110, unit: 'F' }), quality: tire },
        altitude: metersFromFeet(surroundings?.altitude ?? 0),
      })
    const set = target(51, 'measured')
    return (
      says(found, 'warm-tire-hides-low', /finish cold\. Never bleed/) &&
      set.ok &&
      set.target.value === 41 &&
      set.cappedBy === 'allowance'
    )
  },
  K34: (found) => leads(found, 'sealant-inside') && says(found, 'sealant-inside', /^No flame, spark/),
  K35: (found) =>
    leads(found, 'run-low-damage-possible') &&
    of(found, 'run-low-damage-possible')?.holds.includes('inflation') === true &&
    says(found, 'run-low-damage-possible', /before it was inspected inside/),
  K38: (found) => hasFound(found, 'sensor-battery-low') && found.primary === null,
  K39: (found) =>
    of(found, 'sensor-battery-low')?.kind === 'cause' &&
    !hasFound(found, 'cold-morning-margin') &&
    !hasFound(found, 'tire-low'),
  K40: (found) => says(found, 'comeback', /no charge until/),
  K42: (found) =>
    of(found, 'id-notation-differs')?.because.every(({ value, says }) =>
      says.includes(Number(value).toString(16).toUpperCase()),
    ) === true,
  K43: (found) =>
    says(found, 'no-sensor-on-arrival', /^Record it with a photo before any work/) &&
    ['sensor', 'relearn'].every((offer) =>
      of(found, 'no-sensor-on-arrival')?.offers.includes(offer as Offer),
    ),
  K45: (found) =>
    of(found, 'placard-unverified')?.holds.includes('pressure-setting') === true &&
    found.findings.every(
      ({ customer, because }) =>
        ![customer, ...because.map(({ says }) => says)].some((one) => /\d/.test(one)),
    ),
  K47: (found) =>
    leads(found, 'not-driven-yet') && !hasFound(found, 'comeback') && !hasFound(found, 'warning-unexplained'),
  K49: (found) => of(found, 'tire-old')?.kind === 'note' && hasFound(found, 'nothing-found-today'),
  K50: (found) => /The flashing fault was hiding this\.$/.test(of(found, 'tire-low')?.customer ?? ''),
  K52: (found) => says(found, 'one-place-only', /^No work/) && sellsNothing(found),
  K54: (found) => of(found, 'no-sensor-on-arrival')?.wheels.join() === 'SP',
  K55: (found) => says(found, 'collision-corner', /before ordering/),
  K57: (found) =>
    leads(found, 'stem-leaking') && says(found, 'stem-leaking', /^Do not pull or bend it\. Renew/),
  M01: (found) => found.primary === 'tire-low' && hasFound(found, 'retry-silent-wheel'),
  M02: (found) => leads(found, 'run-low-damage-possible') && hasFound(found, 'placard-unverified'),
  M03: (found) =>
    of(found, 'tire-low')?.because.some(({ says }) => /cold it holds 24\.2\d* psi/.test(says)) === true,
  M04: (found) =>
    found.primary === 'warning-unexplained' && of(found, 'weather-and-seepage')?.kind === 'also',
  M05: (found) =>
    hasFound(found, 'temporary-spare-fitted') &&
    !hasFound(found, 'over-inflated') &&
    !offered(found).includes('sensor'),
  M06: (found) => says(found, 'not-driven-yet', /^Drive 20 minutes, then judge again/) && sellsNothing(found),
  M07: (found) =>
    leads(found, 'run-low-damage-possible') &&
    of(found, 'run-low-damage-possible')?.holds.includes('inflation') === true,
  M08: (found) => of(found, 'tire-low')?.confidence === 'likely',
  M09: (found) =>
    leads(found, 'run-low-damage-possible') &&
    !hasFound(found, 'tire-low') &&
    !hasFound(found, 'under-placard'),
  M10: (found) => hasFound(found, 'retry-silent-wheel') && !hasFound(found, 'no-sensor-on-arrival'),
}
