import type { EventEvidence, HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import type { Pressure, Temperature } from '@bayledger/reckoning/quantity'
import type { Surroundings } from '@bayledger/reckoning/sheet'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState, WheelWork, Written } from '../state.ts'
import { fahrenheit, psi } from './evidence-of.ts'

type EarlierReading = NonNullable<HistoryEvidence['earlierReadings']>[number]

/** A problem on our own work within this time may be a comeback (common practice, no source). */
export const comebackDays = 90

/** Looked up, and the shop's records hold nothing. That is not the same as not looked up. */
export const nothingOnRecord: HistoryEvidence = {
  earlierReadings: [],
  idsOnOtherVehicles: [],
  ourWorkOn: [],
  partsUnderWarranty: [],
}

/**
 * What the shop's own records add to an order's evidence, in psi, degrees Fahrenheit and days before this order was
 * opened: the last reading of each tire with its altitude and gauge, wheels that we worked on, sensor IDs on record for other vehicles. `earlier`
 * are the vehicle's finished orders from before this one. It enters the evidence by value and stays as it was then.
 */
export const historyOf = (
  state: OrderState,
  earlier: readonly OrderState[],
  idsOnOtherVehicles: readonly string[],
): HistoryEvidence => {
  const openedAt = Date.parse(state.opened?.written.writtenAt ?? '')
  const daysBefore = (instant: string) =>
    Math.max(0, Math.round((openedAt - Date.parse(instant)) / 8_640_000) / 10)
  const newestFirst = earlier.toSorted((one, other) => openingOf(other).localeCompare(openingOf(one)))
  const ourWork = readingOrder.filter((wheel) =>
    newestFirst.some((order) => workedAt(order, wheel).some((at) => daysBefore(at) <= comebackDays)),
  )
  const fittedByUs = newestFirst.some(({ work }) => Object.values(work).some(({ fitted }) => fitted !== null))
  return {
    earlierReadings: readingOrder.flatMap((wheel): EarlierReading[] => {
      const last = newestFirst.map((order) => lastAir(order, wheel)).find((air) => air !== null)
      if (!last || last === 'unknown') return []
      const { pressure, temperature, altitudeFeet, gauge, written } = last
      const daysAgo = daysBefore(written.writtenAt)
      if (isAnotherTireNow(state, wheel, daysAgo)) return []
      return [
        {
          wheel,
          pressure: psi(pressure),
          ...(temperature ? { temperature: fahrenheit(temperature) } : {}),
          ...(altitudeFeet === null ? {} : { altitude: altitudeFeet }),
          gauge,
          daysAgo,
        },
      ]
    }),
    idsOnOtherVehicles: idsOnOtherVehicles.toSorted(),
    ourWorkOn: ourWork,
    // No register holds how long a part is under warranty: where we fitted one, the warranty stays unchecked.
    ...(fittedByUs ? {} : { partsUnderWarranty: [] }),
  }
}

const openingOf = ({ opened }: OrderState): string => opened?.written.writtenAt ?? ''

export type Air = {
  readonly pressure: Pressure
  readonly temperature: Temperature | null
  /** Of the place where the pressure was read or set; `null`: not recorded. */
  readonly altitudeFeet: number | null
  /** The code of the gauge. */
  readonly gauge: string
  readonly written: Written
}

/** The air that an order left in a tire; `unknown` where the wheel was off after it was read, `null` if it never was. */
const lastAir = (order: OrderState, wheel: WheelPosition): Air | 'unknown' | null => {
  const work = order.work[wheel]
  const touched = work ? handled(work) : []
  const air =
    airSet(work?.pressure) ?? airGauged(order, wheel, 'closing') ?? airGauged(order, wheel, 'arrival')
  if (!air) return touched.length > 0 ? 'unknown' : null
  return touched.some(({ seq }) => seq > air.written.seq) ? 'unknown' : air
}

export const airSet = (set: WheelWork['pressure'] | undefined): Air | null =>
  set
    ? {
        pressure: set.asLeft,
        temperature: airTemperature(set.surroundings),
        altitudeFeet: set.surroundings.altitudeFeet,
        gauge: set.instrument.code,
        written: set.written,
      }
    : null

export const airGauged = (
  order: OrderState,
  wheel: WheelPosition,
  phase: 'arrival' | 'closing',
): Air | null => {
  const gauge = order[phase].wheels[wheel]?.gauge
  return gauge
    ? {
        pressure: gauge.pressure,
        temperature: temperatureAt(order, wheel, phase),
        altitudeFeet: altitudeOf(order),
        gauge: gauge.instrument.code,
        written: gauge.written,
      }
    : null
}

/** The temperature of the air in a tire when it was gauged: from its own sensor, else of the tires, else of the air around
 * them. */
const temperatureAt = (
  order: OrderState,
  wheel: WheelPosition,
  phase: 'arrival' | 'closing',
): Temperature | null => {
  const sensor = order[phase].wheels[wheel]?.sensor?.reading
  const own = sensor?.answer === 'answered' ? sensor.temperature : null
  const asReceived = phase === 'arrival' ? order.surroundings?.surroundings : undefined
  return own ?? (asReceived ? airTemperature(asReceived) : null)
}

/** An order is worked on at one place, so what was noted of its air on arrival holds for the closing check as well. */
const altitudeOf = ({ surroundings }: OrderState): number | null =>
  surroundings?.surroundings.altitudeFeet ?? null

/** The tires' own temperature, else the outdoor temperature if the tires were outdoors. */
const airTemperature = ({ tire, tires, outdoor }: Surroundings): Temperature | null =>
  tire ?? (tires === 'cold' ? outdoor : null)

/** Entries after which a wheel's sensor, valve or bead is our work. */
const handled = ({ removed, mounted, programmed, fitted, broken }: WheelWork): Written[] =>
  [removed, mounted, programmed, fitted, broken].flatMap((fact) => (fact ? [fact.written] : []))

/** When we worked on a wheel, by each entry that says so. */
export const workedAt = ({ work, relearn }: OrderState, wheel: WheelPosition): string[] =>
  [
    ...(work[wheel] ? handled(work[wheel]) : []),
    ...(relearn?.confirmed.includes(wheel) ? [relearn.written] : []),
  ].map(({ writtenAt }) => writtenAt)

/** Whether tires were, or may have been, moved or changed since that reading, so that it says nothing about this tire. */
const isAnotherTireNow = (state: OrderState, wheel: WheelPosition, daysAgo: number): boolean =>
  (state.complaint?.events ?? []).some(
    (event) =>
      movesTires.has(event.kind) &&
      event.happened !== false &&
      (event.wheel == null || event.wheel === wheel) &&
      (event.daysAgo == null || event.daysAgo <= daysAgo),
  )

const movesTires: ReadonlySet<EventEvidence['kind']> = new Set([
  'rotation',
  'tires-changed',
  'seasonal-wheels',
  'used-wheel',
  'aftermarket-wheels',
])
