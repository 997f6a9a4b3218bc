import type { Casing, Evidence, HistoryEvidence, WheelEvidence } from '@bayledger/reckoning/evidence/evidence'
import type { Pressure, Temperature } from '@bayledger/reckoning/quantity'
import { placardOf, type SpecificationSheet, sensorOf, tiresOf } from '@bayledger/reckoning/sheet'
import { pressureIn } from '@bayledger/reckoning/units/pressure-units'
import { temperatureIn } from '@bayledger/reckoning/units/temperature-units'
import { type Axle, axleOf, readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState, Recorded, TireRecord, VehicleCheck, WheelReadings } from '../state.ts'
import { foundAt, holesIn, withFound } from './found-evidence.ts'
import { tireAgeSeen } from './sidewall-seen.ts'
import { skippedChecks } from './skipped-checks.ts'

/**
 * The evidence for `diagnose` from an order's arrival facts, in psi, degrees Fahrenheit and feet.
 * Only facts as received enter it, and what was found wrong during the work; what was read after the work began belongs
 * to the closing check.
 * `history` is what other orders know (earlier readings, IDs seen elsewhere) and is loaded by the caller.
 */
export const evidenceOf = (state: OrderState, history: HistoryEvidence | null): Evidence => {
  const wheels = Object.fromEntries(
    readingOrder.flatMap((wheel) => {
      const readings = state.arrival.wheels[wheel]
      const tire = state.arrival.tires[wheel]
      const found = foundAt(state, wheel)
      const holes = holesIn(state, wheel)
      return readings || tire || found.length > 0 || holes.punctures
        ? [[wheel, withFound({ ...wheelEvidence(readings ?? null, tire ?? null), ...holes }, found)]]
        : []
    }),
  )
  const module = state.arrival.module
  const evidence: Evidence = dropNulls({
    units: { pressure: 'psi', temperature: 'F', altitude: 'ft' },
    vehicle: state.sheet ? vehicleEvidence(state.sheet.sheet, state) : null,
    light: {
      lampCheck: state.arrival.telltale?.lampCheck,
      behavior: state.arrival.telltale?.behavior,
      reported: state.complaint?.reportedLight,
    },
    wheels,
    controlModule: module
      ? { state: module.state, notation: module.notation, ids: module.ids, codes: module.codes }
      : null,
    strayIds: module?.strayIds,
    events: state.complaint?.events,
    surroundings: state.surroundings ? surroundingsEvidence(state.surroundings) : null,
    history,
    notPossible: notPossible(state),
  })
  const skipped = skippedChecks(state, evidence)
  return skipped.length === 0
    ? evidence
    : { ...evidence, notPossible: [...(evidence.notPossible ?? []), ...skipped] }
}

const vehicleEvidence = (sheet: SpecificationSheet, state: OrderState): Evidence['vehicle'] => {
  const perAxle = <T>(give: (axle: Axle) => T) => ({
    front: give('front'),
    rear: give('rear'),
    spare: give('spare'),
  })
  return {
    system: sheet.system,
    sensorFrequencyMHz: sensorOf(sheet)?.frequencyMHz,
    pressureDisplay: sheet.pressureDisplay,
    spare: sheet.spare === 'unknown' ? null : sheet.spare,
    spareMonitored: sheet.spareMonitored,
    sensorMounting: sensorOf(sheet)?.mounting,
    placard: {
      ...perAxle((axle) => placardOf(sheet)?.[axle]?.psi),
      verified: (sheet.sources.placard?.verifiedBy ?? null) !== null || state.figures.placard !== undefined,
    },
    warnAt: sheet.warnAtPsi,
    loadClass: perAxle((axle) => tiresOf(sheet)?.[axle]?.loadClass),
    casing: casingsOf(state),
    sidewallMaximum: perAxle((axle) => tiresOf(sheet)?.[axle]?.sidewallMaximumPsi),
  }
}

/** By axle, where any sidewall was read; an order on which none was has no such member. */
const casingsOf = ({ arrival }: OrderState): NonNullable<Evidence['vehicle']>['casing'] => {
  const isRead = Object.values(arrival.tires).some((tire) => tire.casing !== undefined)
  return isRead
    ? {
        front: casingOf(arrival, 'front'),
        rear: casingOf(arrival, 'rear'),
        spare: casingOf(arrival, 'spare'),
      }
    : null
}

/**
 * What the sidewalls of an axle say about their body plies. Steel where one of them says so; polyester only where every tire
 * of the axle does, because a tire that nobody read may be of steel.
 */
const casingOf = ({ tires }: VehicleCheck, axle: Axle): Casing | null => {
  const read = readingOrder.filter((wheel) => axleOf(wheel) === axle).map((wheel) => tires[wheel]?.casing)
  if (read.includes('steel')) return 'steel'
  return read.every((casing) => casing === 'polyester') ? 'polyester' : null
}

/** Full years by the date code, where an age was not entered beside it. */
const yearsByPrint = (tire: Recorded<TireRecord> | null): number | null =>
  tire ? (tireAgeSeen(tire)?.fullYears ?? null) : null

const wheelEvidence = (readings: WheelReadings | null, tire: Recorded<TireRecord> | null): WheelEvidence => {
  const sensor = readings?.sensor?.reading
  const answered = sensor?.answer === 'answered' ? sensor : null
  return {
    mounted: readings?.mounted,
    gauge: readings?.gauge ? psi(readings.gauge.pressure) : null,
    answer: sensor?.answer,
    tries: sensor && sensor.answer !== 'not-tried' ? sensor.tries : null,
    id: answered?.id,
    sensorPressure: answered?.pressure ? psi(answered.pressure) : null,
    sensorTemperature: answered?.temperature ? fahrenheit(answered.temperature) : null,
    battery: answered?.battery,
    frequencyMHz: answered?.frequencyMHz,
    followsPressure: answered?.followsPressure,
    learnRefusals: answered?.learnRefusals,
    valve: tire?.valve,
    stem: tire?.stem,
    sensorAgeMonths: tire?.sensorAgeMonths,
    tireAgeYears: tire?.tireAgeYears ?? yearsByPrint(tire),
    treadDepth32nds: tire?.treadDepth32nds,
    sealantSeen: tire?.sealantSeen,
    tireDamage: tire?.tireDamage,
    fastenerDamage: tire?.fastenerDamage,
  }
}

const surroundingsEvidence = ({
  surroundings,
  minutesDriven,
  lastSet,
}: NonNullable<OrderState['surroundings']>) => ({
  outdoor: fahrenheit(surroundings.outdoor),
  tires: surroundings.tires,
  tireTemperature: surroundings.tire ? fahrenheit(surroundings.tire) : null,
  altitude: surroundings.altitudeFeet,
  overnightLow: surroundings.overnightLow ? fahrenheit(surroundings.overnightLow) : null,
  minutesDriven,
  lastSet: lastSet ? { temperature: fahrenheit(lastSet.temperature), altitude: lastSet.altitudeFeet } : null,
})

const notPossible = (state: OrderState): NonNullable<Evidence['notPossible']> => [
  ...readingOrder.flatMap((wheel: WheelPosition) =>
    (state.arrival.wheels[wheel]?.notPossible ?? []).map(({ field, why }) => ({
      field: `wheels.${wheel}.${field}`,
      why,
    })),
  ),
  ...(state.arrival.module?.state === 'unreadable' && state.arrival.module.why
    ? [{ field: 'controlModule', why: state.arrival.module.why }]
    : []),
]

/** psi is exact as typed; another unit is rounded to a thousandth so that canonical text stays short. */
export const psi = (pressure: Pressure): number =>
  pressure.unit === 'psi' ? pressure.value : toThousandth(pressureIn('psi', pressure))

export const fahrenheit = (temperature: Temperature): number =>
  temperature.unit === 'F' ? temperature.value : toThousandth(temperatureIn('F', temperature))

const toThousandth = (value: number): number => Math.round(value * 1000) / 1000

/** Absent and null mean the same, "not checked"; one spelling keeps the digest of equal evidence equal. */
const dropNulls = <T>(value: T): T => {
  if (Array.isArray(value)) return value.map(dropNulls) as T
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, member]) => member !== null && member !== undefined)
      .map(([key, member]) => [key, dropNulls(member)]),
  ) as T
}
