import type { Evidence } from '../../evidence/evidence-schema.ts'
import { setTarget } from '../../pressure/set-target.ts'
import { metersFromFeet } from '../../units/length-units.ts'
import { inKelvin } from '../../units/temperature-units.ts'
import { type Diagnosis, type Figures, type Finding, type Offer, partOffers } from '../diagnosis.ts'
import type { FindingCode } from '../finding-codes.ts'
import type { ReasonCode } from '../reason-codes.ts'

type Holds = (diagnosis: Diagnosis, evidence: Evidence) => boolean

const of = ({ findings }: Diagnosis, code: FindingCode): Finding | undefined =>
  findings.find((finding) => finding.code === code)

const offered = ({ findings }: Diagnosis): Offer[] => findings.flatMap(({ offers }) => offers)

const hasFound = (diagnosis: Diagnosis, ...codes: FindingCode[]): boolean =>
  codes.every((code) => of(diagnosis, code) !== undefined)

const sellsNothing = (diagnosis: Diagnosis): boolean => offered(diagnosis).length === 0

const sellsNoPart = (diagnosis: Diagnosis): boolean =>
  !offered(diagnosis).some((offer) => partOffers.has(offer))

const reasonOf = (diagnosis: Diagnosis, code: FindingCode, reason: ReasonCode) =>
  of(diagnosis, code)?.because.find((one) => one.code === reason)

const numbersIn = (figures: Figures): boolean => Object.values(figures).some((one) => typeof one === 'number')

const leads = ({ findings }: Diagnosis, code: FindingCode): boolean => findings[0]?.code === code

const near = (value: unknown, wanted: number, within = 0.05): boolean =>
  typeof value === 'number' && Math.abs(value - wanted) <= within

/**
 * What each case's remark requires beyond the names of its findings, by case: the facts of it; its words are held in
 * the wording room. False of a diagnosis that found nothing.
 */
export const mustHold: Readonly<Record<string, Holds>> = {
  K01: (found) => hasFound(found, 'tire-low') && !offered(found).includes('sensor'),
  K02: (found) => of(found, 'sensor-silent')?.confidence === 'firm',
  K04: (found) =>
    near(of(found, 'cold-morning-margin')?.figures.value, 25.8) &&
    reasonOf(found, 'weather-and-seepage', 'colder-air-explains')?.values.percent === 42,
  K05: (found) =>
    near(of(found, 'slow-leak')?.figures.drop, 8.1) && near(of(found, 'slow-leak')?.figures.perDay, 0.9),
  K06: (found) =>
    of(found, 'sensor-reads-wrong')?.figures.sensor === 26 &&
    of(found, 'sensor-reads-wrong')?.figures.value === 32,
  K08: (found) =>
    hasFound(found, 'gauge-suspect') && !hasFound(found, 'sensor-reads-wrong') && sellsNoPart(found),
  K10: (found) =>
    of(found, 'rotated-without-relearn')?.kind === 'note' &&
    of(found, 'rotated-without-relearn')?.offers.includes('relearn') === true,
  K11: (found) =>
    leads(found, 'axle-pressures-exchanged') &&
    of(found, 'axle-pressures-exchanged')?.holds.includes('relearn') === true &&
    hasFound(found, 'rotated-without-relearn'),
  K13: (found) => hasFound(found, 'id-duplicated'),
  K15: (found) =>
    of(found, 'id-not-stored')?.kind === 'cause' && of(found, 'stored-id-unheard')?.offers.length === 0,
  K17: (found) => hasFound(found, 'wheel-from-another-vehicle', 'id-known-elsewhere'),
  K18: (found) =>
    hasFound(found, 'other-wheel-set') &&
    !hasFound(found, 'id-not-stored') &&
    !hasFound(found, 'stored-id-unheard'),
  K19: (found) => offered(found).includes('sensor') && offered(found).includes('set-of-four'),
  K21: (found) => hasFound(found, 'reset-only') && sellsNoPart(found),
  K22: (found) => found.findings.map(({ code }) => code).join() === 'tire-low,set-then-reset',
  K24: (found) => hasFound(found, 'malfunction-unexplained') && sellsNoPart(found),
  K25: (found) => of(found, 'interference-suspected')?.confidence === 'likely',
  K26: (found) => hasFound(found, 'receiver-fault') && sellsNoPart(found),
  K27: (found) => of(found, 'spare-low')?.figures.label === 35,
  K30: (found) => leads(found, 'learn-mode-open'),
  K31: (found) => leads(found, 'telltale-dark'),
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
      hasFound(found, 'warm-tire-hides-low') &&
      set.ok &&
      set.target.value === 41 &&
      set.cappedBy === 'allowance'
    )
  },
  K34: (found) => leads(found, 'sealant-inside'),
  K35: (found) =>
    leads(found, 'run-low-damage-possible') &&
    of(found, 'run-low-damage-possible')?.holds.includes('inflation') === true,
  K38: (found) => hasFound(found, 'sensor-battery-low') && found.primary === null,
  K39: (found) =>
    of(found, 'sensor-battery-low')?.kind === 'cause' &&
    !hasFound(found, 'cold-morning-margin') &&
    !hasFound(found, 'tire-low'),
  K40: (found) => hasFound(found, 'comeback'),
  K42: (found) =>
    of(found, 'id-notation-differs')?.because.every(
      ({ value, values }) => values.id === Number(value).toString(16).toUpperCase(),
    ) === true,
  K43: (found) =>
    hasFound(found, 'no-sensor-on-arrival') &&
    ['sensor', 'relearn'].every((offer) =>
      of(found, 'no-sensor-on-arrival')?.offers.includes(offer as Offer),
    ),
  K45: (found) =>
    of(found, 'placard-unverified')?.holds.includes('pressure-setting') === true &&
    found.findings.every(
      ({ figures, because }) => !numbersIn(figures) && !because.some(({ values }) => numbersIn(values)),
    ),
  K47: (found) =>
    leads(found, 'not-driven-yet') && !hasFound(found, 'comeback') && !hasFound(found, 'warning-unexplained'),
  K49: (found) => of(found, 'tire-old')?.kind === 'note' && hasFound(found, 'nothing-found-today'),
  K50: (found) => of(found, 'tire-low')?.figures.form === 'under-flash',
  K52: (found) => hasFound(found, 'one-place-only') && sellsNothing(found),
  K54: (found) => of(found, 'no-sensor-on-arrival')?.wheels.join() === 'SP',
  K55: (found) => hasFound(found, 'collision-corner'),
  K57: (found) => leads(found, 'stem-leaking'),
  M01: (found) => found.primary === 'tire-low' && hasFound(found, 'retry-silent-wheel'),
  M02: (found) => leads(found, 'run-low-damage-possible') && hasFound(found, 'placard-unverified'),
  M03: (found) => near(reasonOf(found, 'tire-low', 'cold-at-or-under-warning-point')?.values.cold, 24.25),
  M04: (found) =>
    found.primary === 'warning-unexplained' && of(found, 'weather-and-seepage')?.kind === 'also',
  M05: (found) =>
    hasFound(found, 'temporary-spare-fitted') &&
    !hasFound(found, 'over-inflated') &&
    !offered(found).includes('sensor'),
  M06: (found) => hasFound(found, 'not-driven-yet') && sellsNothing(found),
  M07: (found) =>
    leads(found, 'run-low-damage-possible') &&
    of(found, 'run-low-damage-possible')?.holds.includes('inflation') === true,
  M08: (found) => of(found, 'tire-low')?.confidence === 'likely',
  M09: (found) =>
    leads(found, 'run-low-damage-possible') &&
    !hasFound(found, 'tire-low') &&
    !hasFound(found, 'under-placard'),
  M10: (found) => hasFound(found, 'retry-silent-wheel') && !hasFound(found, 'no-sensor-on-arrival'),
  T01: (found) => found.primary === 'weather-and-seepage' && !hasFound(found, 'warning-unexplained'),
  T02: (found) =>
    hasFound(found, 'cold-weather') &&
    found.findings.every(({ code, offers }) => offers.includes('leak-find') === (code === 'tire-low')),
  T03: (found) =>
    leads(found, 'hot-corner') &&
    !offered(found).includes('leak-find') &&
    found.findings.every(({ code, wheels }) => code === 'hot-corner' || !wheels.includes('LF')),
  T04: (found) =>
    leads(found, 'run-low-damage-possible') &&
    !hasFound(found, 'weather-and-seepage') &&
    !hasFound(found, 'cold-weather'),
  T05: (found) => offered(found).includes('tire') && !offered(found).includes('leak-find'),
  T06: (found) => hasFound(found, 'cold-weather') && found.findings.every(({ stop }) => stop === undefined),
  T07: (found) => found.primary === 'malfunction-unexplained' && sellsNoPart(found),
  T08: (found) => of(found, 'rotated-without-relearn')?.wheels.includes('LR') === true,
  T09: (found) => hasFound(found, 'spare-under-label') && !hasFound(found, 'nothing-found-today'),
  T10: (found) => hasFound(found, 'sensor-asleep') && !offered(found).includes('relearn'),
  T11: (found) => hasFound(found, 'sensor-silent') && sellsNoPart(found),
  T12: (found) =>
    hasFound(found, 'tire-low', 'sensor-does-not-follow') && !hasFound(found, 'no-warning-given'),
  T13: (found) => hasFound(found, 'puncture-found', 'slow-loss-suspected'),
  T14: (found) => of(found, 'slow-loss-suspected')?.wheels.join() === 'RR,LR',
}
