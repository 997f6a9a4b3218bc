import {
  placardOf,
  relearnOf,
  type SpecificationSheet,
  sensorOf,
  studsOf,
  tiresOf,
} from '@bayledger/reckoning/sheet'
import { sequenceText } from '@bayledger/reckoning/torque/read-sequence'
import type { SheetRow } from './sheet-columns.ts'

/** A sheet as a row of its file; `contentOfRow` is the way back. */
export const rowOfSheet = (sheet: SpecificationSheet): SheetRow => ({
  vehicle: sheet.name,
  system: sheet.system,
  pressure_display: sheet.pressureDisplay,
  locates_wheels: sheet.locatesWheels,
  spare: sheet.spare,
  spare_monitored: sheet.spareMonitored,
  staggered: sheet.staggered,
  ...labelColumns(sheet),
  ...studColumns(sheet),
  ...sensorColumns(sheet),
  ...relearnColumns(sheet),
  system_source: sheet.sources.system?.kind ?? null,
  system_reference: sheet.sources.system?.reference ?? null,
  lift_notes: sheet.liftNotes,
  lift_source: sheet.sources.lifting?.kind ?? null,
  lift_reference: sheet.sources.lifting?.reference ?? null,
  unlikely_read_twice: false,
})

const labelColumns = (sheet: SpecificationSheet) => {
  const { warnAtPsi, sources } = sheet
  const label = placardOf(sheet)
  const tires = tiresOf(sheet)
  return {
    label_front_psi: label?.front.psi ?? null,
    label_front_kpa: label?.front.kPa ?? null,
    label_front_typed: label?.front.typed,
    label_rear_psi: label?.rear.psi ?? null,
    label_rear_kpa: label?.rear.kPa ?? null,
    label_rear_typed: label?.rear.typed,
    label_spare_psi: label?.spare?.psi ?? null,
    label_spare_kpa: label?.spare?.kPa ?? null,
    label_spare_typed: label?.spare?.typed,
    warns_at_front_psi: warnAtPsi?.front ?? null,
    warns_at_rear_psi: warnAtPsi?.rear ?? null,
    warns_at_spare_psi: warnAtPsi?.spare ?? null,
    tire_front: tires?.front.size ?? null,
    tire_front_class: tires?.front.loadClass ?? null,
    tire_front_sidewall_psi: tires?.front.sidewallMaximumPsi ?? null,
    tire_rear: tires?.rear.size ?? null,
    tire_rear_class: tires?.rear.loadClass ?? null,
    tire_rear_sidewall_psi: tires?.rear.sidewallMaximumPsi ?? null,
    tire_spare: tires?.spare?.size ?? null,
    tire_spare_class: tires?.spare?.loadClass ?? null,
    tire_spare_sidewall_psi: tires?.spare?.sidewallMaximumPsi ?? null,
    label_source: sources.placard?.kind ?? null,
    label_reference: sources.placard?.reference ?? null,
  }
}

const studColumns = (sheet: SpecificationSheet) => {
  const studs = studsOf(sheet)
  const source = sheet.sources.studTorque
  return {
    stud_count: studs?.count ?? null,
    thread: studs?.thread ?? null,
    fastener: studs?.fastener ?? null,
    seat: studs?.seat ?? null,
    wheel_torque: studs?.torque.value ?? null,
    wheel_torque_unit: studs?.torque.unit ?? null,
    hand_turns: studs?.handTurns ?? null,
    makers_sequence: studs?.makersSequence ? sequenceText(studs.makersSequence) : null,
    locking_fastener: studs?.lockingFastener ?? null,
    torque_again_from_miles: studs?.retorqueMiles.from ?? null,
    torque_again_to_miles: studs?.retorqueMiles.to ?? null,
    wheel_torque_source: source?.kind ?? null,
    wheel_torque_reference: source?.reference ?? null,
  }
}

const sensorColumns = (sheet: SpecificationSheet) => {
  const sensor = sensorOf(sheet)
  const source = sheet.sources.frequency
  return {
    sensor_known: sheet.sensor !== 'missing',
    sensor_mhz: sensor?.frequencyMHz ?? null,
    sensor_protocol: sensor?.protocol ?? null,
    sensor_stem: sensor?.stem ?? null,
    sensor_mounting: sensor?.mounting ?? null,
    sensor_woken_by: sensor?.wokenBy ?? null,
    stem_nut_torque: sensor?.stemNutTorque?.value ?? null,
    stem_nut_torque_unit: sensor?.stemNutTorque?.unit ?? null,
    stem_screw_torque: sensor?.stemScrewTorque?.value ?? null,
    stem_screw_torque_unit: sensor?.stemScrewTorque?.unit ?? null,
    valve_core_torque: sensor?.coreTorque.value ?? null,
    valve_core_torque_unit: sensor?.coreTorque.unit ?? null,
    sensor_source: source?.kind ?? null,
    sensor_reference: source?.reference ?? null,
  }
}

const relearnColumns = (sheet: SpecificationSheet) => {
  const relearn = relearnOf(sheet)
  return {
    relearn_known: sheet.relearn !== 'missing',
    relearn_method: relearn?.method ?? null,
    relearn_entry: relearn?.entry ?? null,
    relearn_confirmation: relearn?.confirmation ?? null,
    relearn_exit: relearn?.exit ?? null,
    relearn_limit_minutes: relearn?.timeLimitMinutes ?? null,
    relearn_park_minutes: relearn?.parkMinutes ?? null,
    relearn_drive_minutes: relearn?.driveMinutes ?? null,
    relearn_drive_mph: relearn?.driveSpeedMph ?? null,
    relearn_trap: relearn?.knownTrap ?? null,
    relearn_source: sheet.sources.relearn?.kind ?? null,
    relearn_reference: sheet.sources.relearn?.reference ?? null,
  }
}
