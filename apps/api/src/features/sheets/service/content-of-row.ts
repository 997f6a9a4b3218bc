import type { CsvFault } from '@bayledger/contract/csv'
import { SheetContent } from '@bayledger/contract/sheets'
import type { Torque } from '@bayledger/reckoning/quantity'
import { torqueDoubts } from '@bayledger/reckoning/torque/plausible-torque'
import { readSequence } from '@bayledger/reckoning/torque/read-sequence'
import { torqueDoubtWords } from '@bayledger/wording/en/torque-doubts'
import { sheetRowWords } from '../../../words/csv-words.ts'
import type { SheetRow } from './sheet-columns.ts'

type Column = keyof SheetRow & string

/**
 * A row of an imported file as it is saved, or each fault in it. A figure is in the file as a whole or not at all: a part
 * of one is refused by the name of each empty cell.
 */
export const contentOfRow = (
  row: SheetRow,
): { readonly content: SheetContent } | { readonly faults: readonly CsvFault[] } => {
  const order =
    row.makers_sequence === null || row.stud_count === null
      ? null
      : readSequence(row.makers_sequence, row.stud_count)
  if (order?.ok === false)
    return {
      faults: [
        {
          column: 'makers_sequence',
          found: order.found,
          ...sheetRowWords.sequence(order.allowed, order.do),
        },
      ],
    }
  const faults = partFaults(row)
  if (faults.length > 0) return { faults }
  const sent = contentSent(row, order?.value ?? null)
  const read = SheetContent.safeParse(sent)
  if (read.success) return { content: read.data }
  // Each cell was read within its limits: what is left are the sheet's own rules, each in its own words.
  return {
    faults: read.error.issues.map(({ path, message }) => {
      const column = columnOfField[path.join('.')] ?? path.join('.')
      return { column, found: String(row[column as Column] ?? ''), ...sheetRowWords.notTaken(message) }
    }),
  }
}

/** What is odd about a row's figures: asked once, and taken where the person says that they read it twice. */
export const doubtsOfRow = (row: SheetRow): CsvFault[] => {
  if (row.unlikely_read_twice) return []
  const torque = torqueOf(row.wheel_torque, row.wheel_torque_unit)
  if (torque === null || row.thread === null) return []
  const thread = row.thread
  return torqueDoubts(thread, torque)
    .filter(({ code }) => code !== 'usual-in-other-units')
    .map((doubt) => ({
      column: doubt.code === 'thread-unreadable' ? 'thread' : 'wheel_torque',
      found: doubt.code === 'thread-unreadable' ? thread : String(torque.value),
      ...sheetRowWords.unlikely(torqueDoubtWords(doubt, torque, thread)),
    }))
}

const figures: readonly (readonly Column[])[] = [
  [
    'label_front_psi',
    'label_rear_psi',
    'tire_front',
    'tire_front_class',
    'tire_front_sidewall_psi',
    'tire_rear',
    'tire_rear_class',
    'tire_rear_sidewall_psi',
    'label_source',
    'label_reference',
  ],
  ['tire_spare', 'tire_spare_class', 'tire_spare_sidewall_psi'],
  [
    'stud_count',
    'thread',
    'fastener',
    'seat',
    'wheel_torque',
    'wheel_torque_unit',
    'hand_turns',
    'locking_fastener',
    'torque_again_from_miles',
    'torque_again_to_miles',
    'wheel_torque_source',
    'wheel_torque_reference',
  ],
  [
    'sensor_mhz',
    'sensor_protocol',
    'sensor_stem',
    'sensor_mounting',
    'sensor_woken_by',
    'valve_core_torque',
    'valve_core_torque_unit',
    'sensor_source',
    'sensor_reference',
  ],
  ['stem_nut_torque', 'stem_nut_torque_unit'],
  ['stem_screw_torque', 'stem_screw_torque_unit'],
  ['relearn_method', 'relearn_entry', 'relearn_confirmation', 'relearn_exit'],
  ['relearn_source', 'relearn_reference'],
  ['system_source', 'system_reference'],
  ['lift_source', 'lift_reference'],
]

const isBlank = (row: SheetRow, column: Column): boolean => row[column] === null || row[column] === ''

const partFaults = (row: SheetRow): CsvFault[] =>
  figures.flatMap((columns) => {
    const empty = columns.filter((column) => isBlank(row, column))
    if (empty.length === 0 || empty.length === columns.length) return []
    const first = columns.find((column) => !isBlank(row, column)) ?? columns[0] ?? ''
    return empty.map((column) => ({ column, found: '', ...sheetRowWords.partOf(first) }))
  })

const torqueOf = (value: number | null, unit: Torque['unit'] | null): Torque | null =>
  value === null || unit === null ? null : { value, unit }

const contentSent = (row: SheetRow, makersSequence: readonly number[] | null): unknown => ({
  name: row.vehicle,
  system: row.system,
  pressureDisplay: row.pressure_display,
  locatesWheels: row.locates_wheels,
  spare: row.spare,
  spareMonitored: row.spare_monitored,
  staggered: row.staggered,
  placard: row.label_front_psi === null ? 'missing' : placardOf(row),
  warnAtPsi:
    row.warns_at_front_psi === null && row.warns_at_rear_psi === null && row.warns_at_spare_psi === null
      ? null
      : { front: row.warns_at_front_psi, rear: row.warns_at_rear_psi, spare: row.warns_at_spare_psi },
  tire: row.tire_front === null ? 'missing' : tiresOf(row),
  studs: row.stud_count === null ? 'missing' : studsOf(row, makersSequence),
  sensor: row.sensor_mhz !== null ? sensorOf(row) : row.sensor_known ? null : 'missing',
  relearn: row.relearn_method !== null ? relearnOf(row) : row.relearn_known ? null : 'missing',
  liftNotes: row.lift_notes,
  sources: {
    placard: sourceOf(row.label_source, row.label_reference),
    studTorque: sourceOf(row.wheel_torque_source, row.wheel_torque_reference),
    frequency: sourceOf(row.sensor_source, row.sensor_reference),
    relearn: sourceOf(row.relearn_source, row.relearn_reference),
    system: sourceOf(row.system_source, row.system_reference),
    lifting: sourceOf(row.lift_source, row.lift_reference),
  },
  verified: {},
})

const sourceOf = (kind: string | null, reference: string | null) =>
  kind === null ? null : { kind, reference }

const placardOf = (row: SheetRow) => ({
  front: printedOf(row.label_front_psi, row.label_front_kpa, row.label_front_typed),
  rear: printedOf(row.label_rear_psi, row.label_rear_kpa, row.label_rear_typed),
  spare:
    row.label_spare_psi === null
      ? null
      : printedOf(row.label_spare_psi, row.label_spare_kpa, row.label_spare_typed),
})

const printedOf = (psi: number | null, kPa: number | null, typed: SheetRow['label_front_typed']) => ({
  psi,
  kPa,
  ...(typed === undefined ? {} : { typed }),
})

const tiresOf = (row: SheetRow) => ({
  front: tireOf(row.tire_front, row.tire_front_class, row.tire_front_sidewall_psi),
  rear: tireOf(row.tire_rear, row.tire_rear_class, row.tire_rear_sidewall_psi),
  spare:
    row.tire_spare === null
      ? null
      : tireOf(row.tire_spare, row.tire_spare_class, row.tire_spare_sidewall_psi),
})

const studsOf = (row: SheetRow, makersSequence: readonly number[] | null) => ({
  count: row.stud_count,
  thread: row.thread,
  fastener: row.fastener,
  seat: row.seat,
  torque: torqueOf(row.wheel_torque, row.wheel_torque_unit),
  handTurns: row.hand_turns,
  makersSequence,
  lockingFastener: row.locking_fastener,
  retorqueMiles: { from: row.torque_again_from_miles, to: row.torque_again_to_miles },
})

const tireOf = (size: string | null, loadClass: string | null, sidewallMaximumPsi: number | null) => ({
  size,
  loadClass,
  sidewallMaximumPsi,
})

const sensorOf = (row: SheetRow) => ({
  frequencyMHz: row.sensor_mhz,
  protocol: row.sensor_protocol,
  stem: row.sensor_stem,
  mounting: row.sensor_mounting,
  wokenBy: row.sensor_woken_by,
  stemNutTorque: torqueOf(row.stem_nut_torque, row.stem_nut_torque_unit),
  stemScrewTorque: torqueOf(row.stem_screw_torque, row.stem_screw_torque_unit),
  coreTorque: torqueOf(row.valve_core_torque, row.valve_core_torque_unit),
})

const relearnOf = (row: SheetRow) => ({
  method: row.relearn_method,
  entry: row.relearn_entry,
  confirmation: row.relearn_confirmation,
  exit: row.relearn_exit,
  timeLimitMinutes: row.relearn_limit_minutes,
  parkMinutes: row.relearn_park_minutes,
  driveMinutes: row.relearn_drive_minutes,
  driveSpeedMph: row.relearn_drive_mph,
  knownTrap: row.relearn_trap,
})

/** Where a rule of the sheet itself is broken: the column that holds the field. */
const columnOfField: Readonly<Record<string, Column>> = {
  'tire.front.size': 'tire_front',
  'tire.rear.size': 'tire_rear',
  'tire.spare.size': 'tire_spare',
  'studs.makersSequence': 'makers_sequence',
  'placard.front.psi': 'label_front_psi',
  'placard.rear.psi': 'label_rear_psi',
  'placard.spare.psi': 'label_spare_psi',
  'sources.relearn': 'relearn_source',
  'sources.system': 'system_source',
  'sources.lifting': 'lift_source',
}
