import {
  placardOf,
  relearnOf,
  type SheetFigure,
  type SpecificationSheet,
  sensorOf,
  studsOf,
  tiresOf,
} from '@bayledger/reckoning/sheet'
import { sequenceText } from '@bayledger/reckoning/torque/read-sequence'

/** What the figures of a sheet are called. */
export const sheetFigureNames: Readonly<Record<SheetFigure, string>> = {
  placard: 'Door label and tires',
  studTorque: 'Wheel torque and thread',
  frequency: 'Sensors',
  relearn: 'Learning',
  system: 'How it watches its tires',
  lifting: 'Lifting',
}

const joined = (parts: readonly (string | false | null | undefined)[]): string =>
  parts.filter((part) => typeof part === 'string' && part !== '').join(', ')

/** A figure with its unit as its source prints it, in one line; empty where the shop does not have it. */
export const sheetFigureValue = (sheet: SpecificationSheet, figure: SheetFigure): string => {
  switch (figure) {
    case 'placard':
      return labelValue(sheet)
    case 'studTorque':
      return studsValue(sheet)
    case 'frequency':
      return sensorValue(sheet)
    case 'relearn':
      return relearnValue(sheet)
    case 'system':
      return systemValue(sheet)
    case 'lifting':
      return sheet.liftNotes
  }
}

const axles = [
  ['front', 'front'],
  ['rear', 'rear'],
  ['spare', 'spare'],
] as const

const labelValue = (sheet: SpecificationSheet): string => {
  const label = placardOf(sheet)
  const tires = tiresOf(sheet)
  return joined(
    axles.map(([at, name]) => {
      const printed = label?.[at]
      const tire = tires?.[at]
      if (!printed) return null
      const { kPa, typed } = printed
      const kilopascals = typed
        ? ` (printed ${typed.value} ${typed.unit})`
        : kPa === null
          ? ''
          : ` (${kPa} kPa)`
      return `${name} ${printed.psi} psi${kilopascals}${tire ? ` ${tire.size} ${tire.loadClass}` : ''}`
    }),
  )
}

const studsValue = (sheet: SpecificationSheet): string => {
  const studs = studsOf(sheet)
  if (studs === null) return ''
  const { torque, thread, count, fastener, makersSequence } = studs
  return joined([
    `${torque.value} ${torque.unit}`,
    `${count} ${fastener}s ${thread}`,
    makersSequence !== null && `the maker’s order ${sequenceText(makersSequence)}`,
  ])
}

const sensorValue = (sheet: SpecificationSheet): string => {
  const sensor = sensorOf(sheet)
  if (sensor === null) return ''
  const { frequencyMHz, protocol, stem, stemNutTorque, stemScrewTorque, coreTorque } = sensor
  return joined([
    `${frequencyMHz} MHz`,
    protocol,
    stem,
    stemNutTorque && `nut ${stemNutTorque.value} ${stemNutTorque.unit}`,
    stemScrewTorque && `screw ${stemScrewTorque.value} ${stemScrewTorque.unit}`,
    `core ${coreTorque.value} ${coreTorque.unit}`,
  ])
}

const relearnValue = (sheet: SpecificationSheet): string => {
  const relearn = relearnOf(sheet)
  if (relearn === null) return ''
  const { method, timeLimitMinutes, parkMinutes, driveMinutes, driveSpeedMph } = relearn
  return joined([
    method,
    timeLimitMinutes !== null && `within ${timeLimitMinutes} min`,
    parkMinutes !== null && `parked ${parkMinutes} min`,
    driveMinutes !== null && `driven ${driveMinutes} min`,
    driveSpeedMph !== null && `at ${driveSpeedMph} mph`,
  ])
}

const systemValue = (sheet: SpecificationSheet): string => {
  if (sheet.system === 'unknown') return ''
  const { warnAtPsi } = sheet
  return joined([
    sheet.system,
    sheet.pressureDisplay && 'shows pressures',
    sheet.locatesWheels && 'finds wheels by itself',
    sheet.spareMonitored && 'watches the spare',
    ...axles.map(([at, name]) => {
      const psi = warnAtPsi?.[at] ?? null
      return psi !== null && `warns at ${psi} psi ${name}`
    }),
  ])
}
