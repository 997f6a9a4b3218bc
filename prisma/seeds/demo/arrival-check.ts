import type { PayloadOf } from '@bayledger/ledger/registry'
import type { PunctureRecord, SensorAnswer } from '@bayledger/ledger/subjects/arrival/kinds'
import type {
  LightBehavior,
  ModuleCode,
  StemCondition,
  TireDamage,
} from '@bayledger/reckoning/evidence/evidence'
import type { Temperature } from '@bayledger/reckoning/quantity'
import type { RoadPosition, WheelPosition } from '@bayledger/reckoning/wheels'
import { goodGauge } from './instruments.ts'
import type { OrderPen } from './order-pen.ts'
import type { DemoPerson } from './people.ts'
import { tamberStreet } from './places.ts'
import { julyOf, sidewallSeen } from './sidewall-seen.ts'

/** A sensor that refers to sea level reads this much under a gauge at 820 ft: 14.70 − 14.27 psi. */
export const seaLevelOffsetPsi = 0.4

/** Temperatures of the demo day from mid-morning on: now, and expected tonight. */
export const midMorning = { outdoor: 27, overnightLow: 11 }

export const fahrenheit = (value: number): Temperature => ({ value, unit: 'F' })
export const psi = (value: number) => ({ value, unit: 'psi' as const })

/** What one road wheel gave. `id` null: it stayed silent, or there is none. `sensorPsi` absent: the gauge's figure less the offset. */
export type ArrivalWheel = {
  readonly wheel: RoadPosition
  readonly gauge: number
  readonly id: string | null
  readonly sensorPsi?: number
  /** Absent: the frequency that the vehicle listens to. */
  readonly frequencyMHz?: number
  /** Absent: as old as the others. */
  readonly sensorAgeMonths?: number
  readonly tireDamage?: readonly TireDamage[]
  readonly punctures?: readonly PunctureRecord[]
  /** Absent: sound. */
  readonly stem?: StemCondition
  readonly sealantSeen?: boolean
  /** How often the sensor was asked until it answered; absent: once. */
  readonly tries?: number
  /** Whether it followed a change of the tire's pressure; absent: nobody tried. */
  readonly followsPressure?: boolean
}

type ArrivalCheck = {
  readonly by: DemoPerson
  readonly deviceId: string
  /** When the check begins; its entries follow twenty seconds apart, or whenever `from` says. */
  readonly from: string | (() => string)
  readonly outdoor: number
  readonly overnightLow: number
  readonly minutesDriven: number | null
  readonly lastSet: { readonly temperature: number } | null
  readonly light: LightBehavior
  readonly wheels: readonly ArrivalWheel[]
  /** A gauge only, or a gauge and the spare's own sensor; `id` `null`: noted that nothing listens to it. */
  readonly spare: number | { readonly gauge: number; readonly id: string | null } | null
  /** What the vehicle listens to; `null`: it has no sensors, and holds no IDs to read. */
  readonly frequencyMHz: number | null
  readonly valve: 'snap-in' | 'clamp-in' | 'plain'
  readonly tires: {
    readonly ageYears: number
    /** The day on which they were made; absent: in a July that makes them as old as this. */
    readonly madeOn?: string
    readonly treadDepth32nds: number
    readonly sensorAgeMonths: number | null
  }
  readonly stored: Partial<Record<WheelPosition, string>>
  readonly codes: readonly ModuleCode[]
  /** IDs on the vehicle's list that none of its places holds. */
  readonly strayIds?: readonly string[]
}

/** The arrival check: temperatures, light, every tire and sensor, what the vehicle has stored. */
export const arrivalCheck = (pen: OrderPen, seen: ArrivalCheck): void => {
  const pace = typeof seen.from === 'string' ? paceFrom(seen.from, 20) : seen.from
  const write = <
    K extends
      | 'surroundings.recorded'
      | 'telltale.observed'
      | 'wheel.checked'
      | 'tire.inspected'
      | 'module.read',
  >(
    kind: K,
    payload: PayloadOf<K>,
  ) => pen.write(kind, payload, { at: pace(), by: seen.by, deviceId: seen.deviceId })

  write('surroundings.recorded', {
    surroundings: {
      outdoor: fahrenheit(seen.outdoor),
      overnightLow: fahrenheit(seen.overnightLow),
      tires: 'cold',
      tire: null,
      altitudeFeet: tamberStreet.altitudeFeet,
    },
    minutesDriven: seen.minutesDriven,
    lastSet: seen.lastSet
      ? { temperature: fahrenheit(seen.lastSet.temperature), altitudeFeet: tamberStreet.altitudeFeet }
      : null,
  })
  write('telltale.observed', {
    phase: 'arrival',
    stepKey: null,
    lampCheck: 'lights',
    behavior: seen.light,
    timed: null,
  })
  for (const { wheel, gauge, ...sensor } of seen.wheels)
    write('wheel.checked', wheelChecked(wheel, gauge, sensorAnswer(seen, gauge, sensor)))
  const spare = typeof seen.spare === 'number' ? { gauge: seen.spare, id: null } : seen.spare
  if (spare) write('wheel.checked', wheelChecked('SP', spare.gauge, spareAnswer(seen, spare)))
  const madeOn = seen.tires.madeOn ?? julyOf(seen.tires.ageYears)
  for (const {
    wheel,
    sensorAgeMonths,
    tireDamage = [],
    punctures,
    stem = 'sound',
    sealantSeen = false,
  } of seen.wheels)
    write(
      'tire.inspected',
      tireInspected(wheel, {
        valve: seen.valve,
        treadDepth32nds: seen.tires.treadDepth32nds,
        tireAgeYears: seen.tires.ageYears,
        sensorAgeMonths: sensorAgeMonths ?? seen.tires.sensorAgeMonths,
        tireDamage: [...tireDamage],
        stem,
        sealantSeen,
        ...(punctures ? { punctures: [...punctures] } : {}),
        ...sidewallSeen(pen, wheel, madeOn),
      }),
    )
  if (spare)
    write(
      'tire.inspected',
      tireInspected('SP', {
        valve: spare.id === null ? 'plain' : seen.valve,
        treadDepth32nds: spare.id === null ? 5 : seen.tires.treadDepth32nds,
        tireAgeYears: seen.tires.ageYears,
        sensorAgeMonths: spare.id === null ? null : seen.tires.sensorAgeMonths,
        tireDamage: [],
        stem: 'sound',
        sealantSeen: false,
        ...sidewallSeen(pen, 'SP', madeOn),
      }),
    )
  if (seen.frequencyMHz !== null)
    write('module.read', {
      phase: 'arrival',
      stepKey: null,
      state: 'read',
      notation: 'hex',
      ids: seen.stored,
      codes: [...seen.codes],
      strayIds: [...(seen.strayIds ?? [])],
      why: null,
    })
}

const wheelChecked = (
  wheel: WheelPosition,
  gauge: number,
  sensor: SensorAnswer | null,
): PayloadOf<'wheel.checked'> => ({
  phase: 'arrival',
  stepKey: null,
  wheel,
  mounted: wheel === 'SP' ? null : 'road',
  gauge: { pressure: psi(gauge), instrument: goodGauge },
  sensor,
  notPossible: [],
})

/** A sensor that answered at once, as cold as the air around it, or stayed silent at three tries. */
const sensorAnswer = (
  seen: ArrivalCheck,
  gauge: number,
  sensor: Pick<ArrivalWheel, 'id' | 'sensorPsi' | 'frequencyMHz' | 'tries' | 'followsPressure'>,
): SensorAnswer | null => {
  if (seen.frequencyMHz === null) return null
  if (sensor.id === null) return { answer: 'silent', tries: 3 }
  return {
    answer: 'answered',
    tries: sensor.tries ?? 1,
    id: sensor.id,
    pressure: psi(sensor.sensorPsi ?? sensorUnder(gauge)),
    temperature: fahrenheit(seen.outdoor),
    battery: 'ok',
    frequencyMHz: sensor.frequencyMHz ?? seen.frequencyMHz,
    followsPressure: sensor.followsPressure ?? null,
  }
}

const spareAnswer = (
  seen: ArrivalCheck,
  spare: { readonly gauge: number; readonly id: string | null },
): SensorAnswer | null => {
  if (spare.id !== null) return sensorAnswer(seen, spare.gauge, spare)
  return typeof seen.spare === 'number' ? null : { answer: 'not-tried' }
}

type TireSeen = Pick<
  PayloadOf<'tire.inspected'>,
  | 'valve'
  | 'treadDepth32nds'
  | 'tireAgeYears'
  | 'sensorAgeMonths'
  | 'tireDamage'
  | 'punctures'
  | 'stem'
  | 'sealantSeen'
  | 'sizeSeen'
  | 'dateCodeSeen'
>

const tireInspected = (wheel: WheelPosition, tire: TireSeen): PayloadOf<'tire.inspected'> => ({
  when: 'arrival',
  stepKey: null,
  wheel,
  ...tire,
  fastenerDamage: [],
  inside: null,
})

/** What a sensor that refers to sea level shows where a gauge shows `gauge`, to a tenth. */
export const sensorUnder = (gauge: number): number => Math.round((gauge - seaLevelOffsetPsi) * 10) / 10

/** Times of the demo day from a first one, each so many seconds after the one before. */
export const paceFrom = (from: string, secondsApart: number): (() => string) => {
  const [hours = 0, minutes = 0] = from.split(':').map(Number)
  let next = (hours * 60 + minutes) * 60
  return () => {
    const at = next
    next += secondsApart
    const part = (value: number) => String(value).padStart(2, '0')
    return `${part(Math.floor(at / 3600))}:${part(Math.floor(at / 60) % 60)}:${part(at % 60)}`
  }
}
