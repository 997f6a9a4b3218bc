import type { SheetContent } from '@bayledger/contract/sheets'
import type { PrintedPressure, Torque } from '@bayledger/reckoning/quantity'
import type {
  FigureSource,
  LoadClass,
  SheetFigure,
  SheetRelearn,
  SheetSensor,
  SheetStuds,
} from '@bayledger/reckoning/sheet'
import { readSequence, sequenceText } from '@bayledger/reckoning/torque/read-sequence'
import { printedFrom } from '@bayledger/reckoning/units/printed-pressure'
import { figureIn, textIn, yesNo } from '../../../ui/record/record-rows.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { hasSpare } from './sheet-rows.ts'

/** Every field of a value by its path, as a row holds it. */
const flat = (at: string, value: unknown): [string, string][] => {
  if (value === null || value === undefined || value === 'missing') return []
  if (typeof value === 'boolean') return [[at, yesNo(value)]]
  if (Array.isArray(value)) return [[at, sequenceText(value)]]
  if (typeof value !== 'object') return [[at, String(value)]]
  return Object.entries(value).flatMap(([key, member]) => flat(at === '' ? key : `${at}.${key}`, member))
}

const has = (figureOf: unknown): string =>
  figureOf === 'missing' ? 'missing' : figureOf === null ? 'none' : 'known'

export const sheetValues = (content: SheetContent): RowValues => {
  const { placard, tire, studs, sensor, relearn, verified: _verified, ...rest } = content
  return {
    ...Object.fromEntries([
      ...flat('', rest),
      ...flat('placard', placard),
      ...flat('tire', tire),
      ...flat('studs', studs),
      ...flat('sensor', sensor),
      ...flat('relearn', relearn),
    ]),
    'has.placard': has(placard),
    'has.studs': has(studs),
    'has.sensor': has(sensor),
    'has.relearn': has(relearn),
  }
}

const isYes = (values: RowValues, key: string): boolean => textIn(values, key) === 'yes'
const typed = <Value extends string>(values: RowValues, key: string): Value => textIn(values, key) as Value
const numberIn = (values: RowValues, key: string): number => figureIn(values, key) ?? 0
const textOrNull = (values: RowValues, key: string): string | null => textIn(values, key) || null

const sourceIn = (values: RowValues, key: SheetFigure, isKnown: boolean) =>
  isKnown && textIn(values, `sources.${key}.kind`) !== ''
    ? {
        kind: typed<FigureSource['kind']>(values, `sources.${key}.kind`),
        reference: textIn(values, `sources.${key}.reference`),
      }
    : null

/** A source that a sheet may do without. */
const sourceGiven = (values: RowValues, key: 'relearn' | 'system' | 'lifting', isKnown: boolean) => {
  const source = sourceIn(values, key, isKnown)
  return source === null ? {} : { [key]: source }
}

const torqueIn = (values: RowValues, key: string): Torque | null => {
  const value = figureIn(values, `${key}.value`)
  const unit = textIn(values, `${key}.unit`)
  return value === null || unit === '' ? null : { value, unit: unit as Torque['unit'] }
}

/** A label that prints no psi stays as it was typed, as long as nobody types another figure in psi. */
const printedIn = (values: RowValues, at: string): PrintedPressure => {
  const psi = numberIn(values, `placard.${at}.psi`)
  const kPa = figureIn(values, `placard.${at}.kPa`)
  const value = figureIn(values, `placard.${at}.typed.value`)
  const unit = textIn(values, `placard.${at}.typed.unit`) === 'bar' ? 'bar' : 'kPa'
  const typed = value === null ? null : printedFrom({ value, unit })
  return typed !== null && typed.psi === psi && typed.kPa === kPa ? typed : { psi, kPa }
}

const tireIn = (values: RowValues, at: string) => ({
  size: textIn(values, `tire.${at}.size`),
  loadClass: typed<LoadClass>(values, `tire.${at}.loadClass`),
  sidewallMaximumPsi: numberIn(values, `tire.${at}.sidewallMaximumPsi`),
})

const studsIn = (values: RowValues): SheetStuds => {
  const count = numberIn(values, 'studs.count')
  const order = textIn(values, 'studs.makersSequence')
  const read = order === '' ? null : readSequence(order, count)
  return {
    count,
    thread: textIn(values, 'studs.thread'),
    fastener: typed(values, 'studs.fastener'),
    seat: typed(values, 'studs.seat'),
    torque: torqueIn(values, 'studs.torque') ?? { value: 0, unit: 'lbf·ft' },
    handTurns: numberIn(values, 'studs.handTurns'),
    makersSequence: read?.ok ? [...read.value] : null,
    lockingFastener: isYes(values, 'studs.lockingFastener'),
    retorqueMiles: {
      from: numberIn(values, 'studs.retorqueMiles.from'),
      to: numberIn(values, 'studs.retorqueMiles.to'),
    },
  }
}

const sensorIn = (values: RowValues): SheetSensor => ({
  frequencyMHz: numberIn(values, 'sensor.frequencyMHz'),
  protocol: textIn(values, 'sensor.protocol'),
  stem: typed(values, 'sensor.stem'),
  mounting: typed(values, 'sensor.mounting'),
  wokenBy: typed(values, 'sensor.wokenBy'),
  stemNutTorque: torqueIn(values, 'sensor.stemNutTorque'),
  stemScrewTorque: torqueIn(values, 'sensor.stemScrewTorque'),
  coreTorque: torqueIn(values, 'sensor.coreTorque') ?? { value: 0, unit: 'lbf·in' },
})

const relearnIn = (values: RowValues): SheetRelearn => ({
  method: typed(values, 'relearn.method'),
  entry: textIn(values, 'relearn.entry'),
  confirmation: textIn(values, 'relearn.confirmation'),
  exit: textIn(values, 'relearn.exit'),
  timeLimitMinutes: figureIn(values, 'relearn.timeLimitMinutes'),
  parkMinutes: figureIn(values, 'relearn.parkMinutes'),
  driveMinutes: figureIn(values, 'relearn.driveMinutes'),
  driveSpeedMph: figureIn(values, 'relearn.driveSpeedMph'),
  knownTrap: textOrNull(values, 'relearn.knownTrap'),
})

const warnAtIn = (values: RowValues) => {
  const at = (axle: string) => figureIn(values, `warnAtPsi.${axle}`)
  const [front, rear, spare] = [at('front'), at('rear'), at('spare')]
  return front === null && rear === null && spare === null ? null : { front, rear, spare }
}

/** The sheet that the rows describe. Called only while no row is at fault.  */
export const sheetContentIn = (values: RowValues): SheetContent => {
  const has = (key: string) => values[`has.${key}`]
  const isKnown = (key: string) => has(key) === 'known'
  const spare = hasSpare(values)
  return {
    name: textIn(values, 'name'),
    system: typed(values, 'system'),
    pressureDisplay: isYes(values, 'pressureDisplay'),
    locatesWheels: isYes(values, 'locatesWheels'),
    spare: typed(values, 'spare'),
    spareMonitored: isYes(values, 'spareMonitored'),
    staggered: isYes(values, 'staggered'),
    liftNotes: textIn(values, 'liftNotes'),
    warnAtPsi: warnAtIn(values),
    placard: isKnown('placard')
      ? {
          front: printedIn(values, 'front'),
          rear: printedIn(values, 'rear'),
          spare: spare ? printedIn(values, 'spare') : null,
        }
      : 'missing',
    tire: isKnown('placard')
      ? {
          front: tireIn(values, 'front'),
          rear: tireIn(values, 'rear'),
          spare: spare ? tireIn(values, 'spare') : null,
        }
      : 'missing',
    studs: isKnown('studs') ? studsIn(values) : 'missing',
    sensor: isKnown('sensor') ? sensorIn(values) : has('sensor') === 'none' ? null : 'missing',
    relearn: isKnown('relearn') ? relearnIn(values) : has('relearn') === 'none' ? null : 'missing',
    sources: {
      placard: sourceIn(values, 'placard', isKnown('placard')),
      studTorque: sourceIn(values, 'studTorque', isKnown('studs')),
      frequency: sourceIn(values, 'frequency', isKnown('sensor')),
      ...sourceGiven(values, 'relearn', isKnown('relearn')),
      ...sourceGiven(values, 'system', typed(values, 'system') !== 'unknown'),
      ...sourceGiven(values, 'lifting', textIn(values, 'liftNotes') !== ''),
    },
    verified: {},
  }
}
