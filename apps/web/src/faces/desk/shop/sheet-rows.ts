import { Torque } from '@bayledger/reckoning/quantity'
import {
  FigureSource,
  LoadClass,
  type SheetFigure,
  SheetRelearn,
  SheetSensor,
  SheetStuds,
  SpecificationSheet,
} from '@bayledger/reckoning/sheet'
import { readSequence } from '@bayledger/reckoning/torque/read-sequence'
import { seen } from '@bayledger/wording/en/report/seen'
import { sheetFaults } from '../../../lib/fault-words.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import { type RecordRow, yesNoRow } from '../../../ui/record/record-rows.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'

const options = (values: readonly string[]) => values.map((value) => ({ value, label: value }))
const choice = (key: string, label: string, values: readonly string[], part?: string): RecordRow => ({
  kind: 'choice',
  key,
  label,
  options: options(values),
  ...(part === undefined ? {} : { part }),
})
const text = (key: string, label: string, optional?: string): RecordRow => ({
  kind: 'text',
  key,
  label,
  ...(optional === undefined ? {} : { optional }),
})
const figure = (
  key: string,
  label: string,
  unit: string,
  [low, high]: readonly [number, number],
  more: { optional?: string; fault?: (typed: string) => string | undefined } = {},
): RecordRow => ({ kind: 'number', key, label, unit, low, high, decimals: 2, ...more })

const isItKilopascals = (typed: string): string | undefined => {
  const value = numberFrom(typed)
  return value !== null && value > 120 ? sheetFaults.labelInKilopascals(typed) : undefined
}

const known = (key: string, label: string, part: string, none?: string): RecordRow => ({
  kind: 'choice',
  key,
  label,
  part,
  options: [
    { value: 'known', label: 'known' },
    ...(none === undefined ? [] : [{ value: 'none', label: none }]),
    { value: 'missing', label: 'not known yet: steps that need it stay shut' },
  ],
})

const sourceRows = (key: SheetFigure): RecordRow[] => [
  {
    kind: 'choice',
    key: `sources.${key}.kind`,
    label: 'Read from',
    options: FigureSource.shape.kind.options.map((value) => ({ value, label: seen.sources[value] })),
  },
  text(`sources.${key}.reference`, 'Where in it'),
]

/** The source of a figure that a sheet may do without: where in it is asked for once there is one. */
const maybeSourceRows = (key: 'relearn' | 'system' | 'lifting', of: string, values: RowValues): RecordRow[] =>
  sourceRows(key)
    .filter((row) => row.key.endsWith('.kind') || (values[`sources.${key}.kind`] ?? '') !== '')
    .map((row) => ({
      ...row,
      label: `${of}: ${row.label.toLowerCase()}`,
      ...(row.key.endsWith('.kind') ? { optional: 'nobody has named it' } : {}),
    }))

/** Whether a spare has rows of its own. */
export const hasSpare = (values: RowValues): boolean => !['none', 'unknown', ''].includes(values.spare ?? '')

const axles = (values: RowValues) =>
  [['front', 'Front'], ['rear', 'Rear'], ...(hasSpare(values) ? [['spare', 'Spare']] : [])] as const

const labelRows = (values: RowValues): RecordRow[] =>
  axles(values).flatMap(([at = '', name = '']) => [
    figure(`placard.${at}.psi`, `${name} pressure`, 'psi', [10, 120], { fault: isItKilopascals }),
    figure(`placard.${at}.kPa`, `${name} pressure, as printed in kPa`, 'kPa', [70, 830], {
      optional: 'not printed',
    }),
    text(`tire.${at}.size`, `${name} tire`),
    choice(`tire.${at}.loadClass`, `${name} tire class`, LoadClass.options),
    figure(`tire.${at}.sidewallMaximumPsi`, `${name} sidewall, most`, 'psi', [20, 130]),
  ])

const torqueRows = (key: string, label: string, optional?: string): RecordRow[] => [
  figure(`${key}.value`, label, '', [0, 2_000], optional === undefined ? {} : { optional }),
  {
    kind: 'choice',
    key: `${key}.unit`,
    label: `${label}: unit that the source prints`,
    options: options(Torque.shape.unit.options),
    ...(optional === undefined ? {} : { optional }),
  },
]

const studRows = (values: RowValues): RecordRow[] => [
  ...torqueRows('studs.torque', 'Wheel torque'),
  text('studs.thread', 'Thread'),
  figure('studs.count', 'Fasteners a wheel', '', [3, 10]),
  choice('studs.fastener', 'Fastener', SheetStuds.shape.fastener.options),
  choice('studs.seat', 'Seat', SheetStuds.shape.seat.options),
  figure('studs.handTurns', 'Turns by hand, at least', '', [0, 100]),
  {
    kind: 'text',
    key: 'studs.makersSequence',
    label: 'The maker’s own order of tightening',
    optional: 'none: the star',
    fault: (typed) => {
      const read = readSequence(typed, numberFrom(values['studs.count'] ?? '') ?? 0)
      return read.ok ? undefined : sheetFaults.unread(read.allowed, read.do)
    },
  },
  yesNoRow('studs.lockingFastener', 'Locking fastener', { yes: 'one a wheel', no: 'none' }),
  figure('studs.retorqueMiles.from', 'Torque looked at again from', 'miles', [0, 10_000]),
  figure('studs.retorqueMiles.to', 'to', 'miles', [0, 10_000]),
  ...sourceRows('studTorque'),
]

const sensorRows = (): RecordRow[] => [
  figure('sensor.frequencyMHz', 'Frequency', 'MHz', [100, 3_000]),
  text('sensor.protocol', 'Protocol'),
  choice('sensor.stem', 'Stem', SheetSensor.shape.stem.options),
  choice('sensor.mounting', 'Mounted at', SheetSensor.shape.mounting.options),
  choice('sensor.wokenBy', 'Woken by', SheetSensor.shape.wokenBy.options),
  ...torqueRows('sensor.stemNutTorque', 'Stem nut torque', 'none'),
  ...torqueRows('sensor.stemScrewTorque', 'Stem screw torque', 'none'),
  ...torqueRows('sensor.coreTorque', 'Valve core torque'),
  ...sourceRows('frequency'),
]

const relearnRows = (values: RowValues): RecordRow[] => [
  choice('relearn.method', 'Method', SheetRelearn.shape.method.options),
  text('relearn.entry', 'How it begins'),
  text('relearn.confirmation', 'How it confirms'),
  text('relearn.exit', 'How it ends'),
  ...(
    [
      ['timeLimitMinutes', 'Time limit'],
      ['parkMinutes', 'Parked first'],
      ['driveMinutes', 'Driven'],
    ] as const
  ).map(([key, label]) => figure(`relearn.${key}`, label, 'min', [0, 1_000], { optional: 'none' })),
  figure('relearn.driveSpeedMph', 'Driven at', 'mph', [0, 100], { optional: 'none' }),
  text('relearn.knownTrap', 'What goes wrong here', 'nothing known'),
  ...maybeSourceRows('relearn', 'The procedure', values),
]

const watches: Readonly<Record<SpecificationSheet['system'], string>> = {
  direct: 'a sensor in each wheel',
  indirect: 'no sensors: it compares how the wheels turn',
  none: 'not at all',
  unknown: 'found out in the bay',
}

/** The rows of a specification sheet. A figure that is not known has no rows but the one that says so. */
export const sheetRows = (values: RowValues): readonly RecordRow[] => [
  {
    ...{ kind: 'text', key: 'name', label: 'Kind of vehicle' },
    hint: 'Make, model and year, as the desk writes up a vehicle of this kind.',
  },
  {
    ...{ kind: 'choice', key: 'system', label: 'How it watches its tires' },
    options: SpecificationSheet.shape.system.options.map((value) => ({
      ...{ value, label: value, detail: watches[value] },
    })),
  },
  yesNoRow('pressureDisplay', 'Shows pressures', { yes: 'yes', no: 'no' }),
  yesNoRow(
    'locatesWheels',
    'Finds wheels by itself',
    { yes: 'yes', no: 'no' },
    'It finds out itself which sensor is at which wheel.',
  ),
  choice('spare', 'Spare', SpecificationSheet.shape.spare.options),
  yesNoRow('spareMonitored', 'Spare has a sensor', { yes: 'yes', no: 'no' }),
  yesNoRow(
    'staggered',
    'Front and rear differ',
    { yes: 'yes', no: 'no' },
    'Its tires have one size at the front and another at the rear.',
  ),
  {
    ...{ kind: 'text', key: 'liftNotes', label: 'Lifting', optional: 'nothing', most: 500 },
    hint: 'As the vehicle maker prints it: where it is lifted, and what is done first.',
  },
  ...((values.liftNotes ?? '').trim() === '' ? [] : maybeSourceRows('lifting', 'Lifting', values)),
  ...(['front', 'rear', 'spare'] as const).map((at) =>
    figure(`warnAtPsi.${at}`, `The vehicle warns at, ${at}`, 'psi', [0, 120], { optional: 'not known' }),
  ),
  ...(values.system === 'unknown' ? [] : maybeSourceRows('system', 'How it watches its tires', values)),
  known('has.placard', 'Label', 'Door label (the vehicle maker’s label governs)'),
  ...(values['has.placard'] === 'known' ? [...labelRows(values), ...sourceRows('placard')] : []),
  known(
    'has.studs',
    'Torque and thread',
    'Wheels (the vehicle maker’s own source only: no table, no similar vehicle)',
  ),
  ...(values['has.studs'] === 'known' ? studRows(values) : []),
  known('has.sensor', 'Sensors', 'Sensors', 'the vehicle has none'),
  ...(values['has.sensor'] === 'known' ? sensorRows() : []),
  known('has.relearn', 'Procedure', 'Learning', 'it needs none'),
  ...(values['has.relearn'] === 'known' ? relearnRows(values) : []),
]
