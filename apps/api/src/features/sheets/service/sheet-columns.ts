import { type PrintedPressure, Torque } from '@bayledger/reckoning/quantity'
import {
  FigureSource,
  LoadClass,
  SheetRelearn,
  SheetSensor,
  SpecificationSheet,
} from '@bayledger/reckoning/sheet'
import {
  type Cell,
  choiceCell,
  maybe,
  maybeTextCell,
  numberCell,
  textCell,
  wholeNumberCell,
  yesNoCell,
} from '../../../core/csv/cells.ts'
import type { RowOf } from '../../../core/csv/csv-table.ts'
import { cellWords } from '../../../words/csv-words.ts'

const psi = () =>
  maybe(numberCell({ from: 10, to: 120, unit: 'psi', other: { from: 121, to: 830, unit: 'kPa' } }))
const kPa = () => maybe(numberCell({ from: 70, to: 830, unit: 'kPa' }))
const torque = () => maybe(numberCell({ from: 0, to: 2_000, unit: '' }))
const minutes = () => maybe(numberCell({ from: 0, to: 1_000, unit: 'min' }))
const text = () => maybe(textCell(200))
const loadClass = () => maybe(choiceCell(LoadClass.options))
const sidewall = () => maybe(numberCell({ from: 20, to: 130, unit: 'psi' }))
const torqueUnit = () => maybe(choiceCell(Torque.shape.unit.options))
const source = () => maybe(choiceCell(FigureSource.shape.kind.options))

type Typed = PrintedPressure['typed']

/** What a label prints that has no psi, as "2.3 bar" or "230 kPa"; empty where it prints psi. */
const typedPressure: Cell<Typed> = {
  read: (text) => {
    if (text.trim() === '') return { value: undefined }
    const found = /^(\d+(?:\.\d+)?)\s*(kpa|bar)$/i.exec(text.trim())
    if (found === null) return cellWords.noLabelPressure
    return { value: { value: Number(found[1]), unit: found[2]?.toLowerCase() === 'bar' ? 'bar' : 'kPa' } }
  },
  write: (typed) => (typed === undefined ? '' : `${typed.value} ${typed.unit}`),
}

/**
 * Our own columns of a specification sheet, in their order; what each holds is in docs/csv.md. A group of columns that
 * is empty is a figure that the shop does not have.
 */
export const sheetColumns = {
  vehicle: textCell(200),
  system: choiceCell(SpecificationSheet.shape.system.options),
  pressure_display: yesNoCell(),
  locates_wheels: yesNoCell(),
  spare: choiceCell(SpecificationSheet.shape.spare.options),
  spare_monitored: yesNoCell(),
  staggered: yesNoCell(),
  label_front_psi: psi(),
  label_front_kpa: kPa(),
  label_front_typed: typedPressure,
  label_rear_psi: psi(),
  label_rear_kpa: kPa(),
  label_rear_typed: typedPressure,
  label_spare_psi: psi(),
  label_spare_kpa: kPa(),
  label_spare_typed: typedPressure,
  warns_at_front_psi: psi(),
  warns_at_rear_psi: psi(),
  warns_at_spare_psi: psi(),
  tire_front: text(),
  tire_front_class: loadClass(),
  tire_front_sidewall_psi: sidewall(),
  tire_rear: text(),
  tire_rear_class: loadClass(),
  tire_rear_sidewall_psi: sidewall(),
  tire_spare: text(),
  tire_spare_class: loadClass(),
  tire_spare_sidewall_psi: sidewall(),
  label_source: source(),
  label_reference: text(),
  stud_count: maybe(wholeNumberCell({ from: 3, to: 10, unit: 'fasteners' })),
  thread: text(),
  fastener: maybe(choiceCell(['nut', 'bolt'])),
  seat: maybe(choiceCell(['cone', 'ball', 'flat'])),
  wheel_torque: torque(),
  wheel_torque_unit: torqueUnit(),
  hand_turns: maybe(numberCell({ from: 0, to: 100, unit: 'turns' })),
  makers_sequence: text(),
  locking_fastener: maybe(yesNoCell()),
  torque_again_from_miles: maybe(numberCell({ from: 0, to: 10_000, unit: 'miles' })),
  torque_again_to_miles: maybe(numberCell({ from: 0, to: 10_000, unit: 'miles' })),
  wheel_torque_source: source(),
  wheel_torque_reference: text(),
  /** `no`: nobody knows yet; `yes` with no sensor entered: the vehicle has none. */
  sensor_known: yesNoCell(),
  sensor_mhz: maybe(numberCell({ from: 100, to: 3_000, unit: 'MHz' })),
  sensor_protocol: text(),
  sensor_stem: maybe(choiceCell(SheetSensor.shape.stem.options)),
  sensor_mounting: maybe(choiceCell(SheetSensor.shape.mounting.options)),
  sensor_woken_by: maybe(choiceCell(SheetSensor.shape.wokenBy.options)),
  stem_nut_torque: torque(),
  stem_nut_torque_unit: torqueUnit(),
  stem_screw_torque: torque(),
  stem_screw_torque_unit: torqueUnit(),
  valve_core_torque: torque(),
  valve_core_torque_unit: torqueUnit(),
  sensor_source: source(),
  sensor_reference: text(),
  relearn_known: yesNoCell(),
  relearn_method: maybe(choiceCell(SheetRelearn.shape.method.options)),
  relearn_entry: text(),
  relearn_confirmation: text(),
  relearn_exit: text(),
  relearn_limit_minutes: minutes(),
  relearn_park_minutes: minutes(),
  relearn_drive_minutes: minutes(),
  relearn_drive_mph: maybe(numberCell({ from: 0, to: 100, unit: 'mph' })),
  relearn_trap: text(),
  relearn_source: source(),
  relearn_reference: text(),
  system_source: source(),
  system_reference: text(),
  lift_notes: maybeTextCell(500),
  lift_source: source(),
  lift_reference: text(),
  /** `yes`: figures that are unlikely were read a second time at their source. */
  unlikely_read_twice: yesNoCell(),
} as const

export type SheetRow = RowOf<typeof sheetColumns>
