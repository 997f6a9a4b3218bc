import type { RowOf } from '../../../core/csv/csv-table.ts'
import type { ExportedEntry, ExportedOrder } from '../store.ts'
import type { orderColumns, partColumns, readingColumns, torqueColumns } from './export-columns.ts'
import { localInstant } from './local-instant.ts'

/** Names of staff by id. */
export type Names = ReadonlyMap<string, string>

const nameOf = (names: Names, { writtenBy }: ExportedEntry): string =>
  writtenBy.kind === 'staff' ? (names.get(writtenBy.staffId) ?? '') : ''

export const placed = ({ number, place, timeZone, receivedAt }: ExportedEntry) => ({
  order: number,
  place,
  at: localInstant(receivedAt, timeZone),
})

const written = (entry: ExportedEntry, names: Names) => ({
  device_at: localInstant(entry.writtenAt, entry.timeZone),
  by: nameOf(names, entry),
  withdrawn: entry.isWithdrawn,
})

/** `named`: whether the customer is named, with plate, VIN, telephone and e-mail. */
export const orderRow = (order: ExportedOrder, named: boolean): RowOf<typeof orderColumns> => {
  const at = (instant: Date | null) => (instant === null ? '' : localInstant(instant, order.timeZone))
  const personal = (value: string | null) => (named ? (value ?? '') : '')
  return {
    order: order.number,
    place: order.place,
    opened_at: at(order.openedAt),
    promised_at: at(order.promisedAt),
    waits: order.waitsHere,
    open: order.isOpen,
    sealed: order.sealed,
    ended_at: at(order.endedAt),
    vehicle: order.vehicle,
    plate: personal(order.plate),
    vin: personal(order.vin),
    customer: personal(order.customer),
    telephone: personal(order.phone),
    email: personal(order.email),
  }
}

export const readingRow = (
  entry: ExportedEntry<'wheel.checked' | 'pressure.set'>,
  names: Names,
): RowOf<typeof readingColumns> => {
  const gauge =
    entry.kind === 'pressure.set'
      ? { pressure: entry.payload.asLeft, instrument: entry.payload.instrument }
      : entry.payload.gauge
  const answer = entry.kind === 'wheel.checked' ? entry.payload.sensor : null
  const answered = answer?.answer === 'answered' ? answer : null
  return {
    ...placed(entry),
    when: entry.kind === 'pressure.set' ? 'as-left' : entry.payload.phase,
    wheel: entry.payload.wheel,
    pressure: gauge?.pressure.value ?? null,
    pressure_unit: gauge?.pressure.unit ?? '',
    gauge: gauge?.instrument.code ?? '',
    gauge_offset_psi: gauge?.instrument.offsetPsi ?? null,
    sensor: answer?.answer ?? null,
    sensor_id: answered?.id ?? '',
    sensor_pressure: answered?.pressure?.value ?? null,
    sensor_pressure_unit: answered?.pressure?.unit ?? '',
    sensor_temperature: answered?.temperature?.value ?? null,
    sensor_temperature_unit: answered?.temperature?.unit ?? '',
    sensor_battery: answered?.battery ?? '',
    ...written(entry, names),
  }
}

export const torqueRow = (
  entry: ExportedEntry<'studs.torqued' | 'torque.checked'>,
  names: Names,
): RowOf<typeof torqueColumns> => {
  const { wheel, figure, clicked, total, moved, wrench } = entry.payload
  const checker = entry.kind === 'torque.checked' ? entry.payload.checkedBy : null
  return {
    ...placed(entry),
    wheel,
    round: entry.kind === 'torque.checked' ? 'second-person' : entry.payload.round,
    figure: figure.value,
    figure_unit: figure.unit,
    clicked,
    studs: total,
    moved: moved.join(';'),
    wrench: wrench.code,
    wrench_due_on: wrench.dueOn,
    checked_by: checker === null ? '' : (names.get(checker.staffId) ?? ''),
    ...written(entry, names),
  }
}

export const partRow = (entry: ExportedEntry<'part.drawn'>, names: Names): RowOf<typeof partColumns> => {
  const { wheel, partNumber, quantity, lot, madeMonth } = entry.payload
  return {
    ...placed(entry),
    wheel,
    part_number: partNumber,
    quantity,
    lot: lot ?? '',
    made_month: madeMonth ?? '',
    ...written(entry, names),
  }
}
