import type { CompleteSheet } from '@bayledger/reckoning/sheet'
import { demoId } from './seeded.ts'
import {
  automaticRelearn,
  clampInSensor,
  connectorRelearn,
  makerManual,
  menuReset,
  placardPhoto,
  printed,
  retorqueMiles,
  sensorSheet,
  snapInSensor,
  stationaryRelearn,
  temporarySpare,
  tire,
  unverified,
} from './sheet-parts.ts'

type SheetFigures = Omit<
  CompleteSheet,
  | 'sheetId'
  | 'version'
  | 'pressureDisplay'
  | 'locatesWheels'
  | 'warnAtPsi'
  | 'spareMonitored'
  | 'staggered'
  | 'studs'
> &
  Partial<Pick<CompleteSheet, 'pressureDisplay' | 'locatesWheels' | 'spareMonitored' | 'staggered'>> & {
    readonly studs: Pick<CompleteSheet['studs'], 'count' | 'thread' | 'torque'> &
      Partial<CompleteSheet['studs']>
  }

/** A first version of a sheet; what is not said is as on most vehicles of the demo. */
const sheet = (key: string, figures: SheetFigures): CompleteSheet => ({
  sheetId: demoId(`sheet/${key}`),
  version: 1,
  pressureDisplay: false,
  locatesWheels: false,
  spareMonitored: false,
  staggered: false,
  warnAtPsi: null,
  ...figures,
  studs: {
    fastener: 'nut',
    seat: 'cone',
    handTurns: 7,
    makersSequence: null,
    lockingFastener: false,
    retorqueMiles,
    ...figures.studs,
  },
})

/** The demo's vehicle types: invented names, figures that a shop of 2026 would meet. */
export const sheets = {
  linnet: sheet('linnet', {
    name: 'Vantrell Linnet sedan 2019',
    system: 'direct',
    spare: 'temporary',
    placard: { front: printed(33, 230), rear: printed(33, 230), spare: printed(60, 420) },
    tire: {
      front: tire('205/55R16 91V', 'SL', 51),
      rear: tire('205/55R16 91V', 'SL', 51),
      spare: temporarySpare,
    },
    sensor: snapInSensor(433.92, 'Vantrell, second pattern'),
    studs: { count: 5, thread: 'M12×1.5', torque: { value: 80, unit: 'lbf·ft' } },
    relearn: stationaryRelearn(
      'Key on, engine off. Press and hold the lock and unlock buttons of the key together until the horn sounds twice.',
      5,
      'Two minutes without an answer end it in silence: start again at the left front.',
    ),
    liftNotes: 'Lift at the four marked seams. Sill trim stands proud of the rear seams: use the low pads.',
    sources: {
      placard: placardPhoto('Linnet 2019'),
      studTorque: makerManual('Vantrell Linnet 2019 service book, wheels, page 4'),
      frequency: makerManual('Vantrell Linnet 2019 service book, wheels, page 9'),
    },
  }),
  tarn: sheet('tarn', {
    name: 'Vantrell Tarn utility 2016',
    system: 'direct',
    locatesWheels: true,
    spare: 'temporary',
    placard: { front: printed(35, 240), rear: printed(35, 240), spare: printed(60, 420) },
    tire: {
      front: tire('235/60R18 103H', 'SL', 51),
      rear: tire('235/60R18 103H', 'SL', 51),
      spare: temporarySpare,
    },
    sensor: clampInSensor(315, 'Vantrell, first pattern', 62),
    studs: { count: 5, thread: 'M14×1.5', torque: { value: 100, unit: 'lbf·ft' } },
    relearn: automaticRelearn(20, 20),
    liftNotes: 'Lift at the frame pads behind the front wheels and before the rear wheels.',
    sources: {
      placard: placardPhoto('Tarn 2016'),
      studTorque: makerManual('Vantrell Tarn 2016 service book, wheels, page 3'),
      frequency: sensorSheet('Sensor application sheet 315-CL, row 12'),
    },
  }),
  moor: sheet('moor', {
    name: 'Kestwick Moor utility 2012',
    system: 'direct',
    spare: 'temporary',
    placard: { front: printed(33, 230), rear: printed(33, 230), spare: printed(60, 420) },
    tire: {
      front: tire('225/65R17 102H', 'SL', 51),
      rear: tire('225/65R17 102H', 'SL', 51),
      spare: temporarySpare,
    },
    sensor: clampInSensor(315, 'Kestwick, first pattern', 48),
    studs: { count: 5, thread: 'M12×1.5', torque: { value: 83, unit: 'lbf·ft' } },
    relearn: stationaryRelearn(
      'Key on, engine off, parking brake set. Turn the lamp switch from off to parking lamps four times within four seconds.',
      5,
      null,
    ),
    liftNotes: 'Lift at the marked seams; the rear ones rust, look before loading them.',
    sources: {
      placard: placardPhoto('Moor 2012'),
      studTorque: makerManual('Kestwick Moor 2012 owner handbook, page 212'),
      frequency: sensorSheet('Sensor application sheet 315-CL, row 31'),
    },
  }),
  haywain: sheet('haywain', {
    name: 'Kestwick Haywain pickup 2021',
    system: 'direct',
    spare: 'full-size',
    spareMonitored: true,
    placard: { front: printed(55, 380), rear: printed(65, 450), spare: printed(65, 450) },
    tire: {
      front: tire('LT265/75R18 E', 'LT-E', 80),
      rear: tire('LT265/75R18 E', 'LT-E', 80),
      spare: tire('LT265/75R18 E', 'LT-E', 80),
    },
    sensor: clampInSensor(315, 'Kestwick, second pattern', 71),
    studs: { count: 8, thread: 'M14×1.5', torque: { value: 136, unit: 'lbf·ft' } },
    relearn: stationaryRelearn(
      'Key on, engine off. In the vehicle menu open Tires, choose Learn, and hold OK until the horn sounds twice. The spare comes last.',
      5,
      'The spare counts as the fifth wheel: lower it or reach its stem before starting.',
    ),
    liftNotes: 'Heavy: check the rating of the lift. Lift at the frame, never at the steps.',
    sources: {
      placard: placardPhoto('Haywain 2021'),
      studTorque: makerManual('Kestwick Haywain 2021 service book, wheels, page 6'),
      frequency: makerManual('Kestwick Haywain 2021 service book, wheels, page 11'),
    },
  }),
  finch: sheet('finch', {
    name: 'Pellowe Finch hatch 2017',
    system: 'indirect',
    spare: 'temporary',
    placard: { front: printed(36, 250), rear: printed(33, 230), spare: printed(60, 420) },
    tire: {
      front: tire('185/65R15 88H', 'SL', 51),
      rear: tire('185/65R15 88H', 'SL', 51),
      spare: temporarySpare,
    },
    sensor: null,
    studs: { count: 4, thread: 'M12×1.5', torque: { value: 107, unit: 'N·m' } },
    relearn: menuReset,
    liftNotes: 'Lift at the four marked seams.',
    sources: {
      placard: placardPhoto('Finch 2017'),
      studTorque: makerManual('Pellowe Finch 2017 owner handbook, page 188'),
      frequency: null,
    },
  }),
  dunnock: sheet('dunnock', {
    name: 'Pellowe Dunnock wagon 2021',
    system: 'direct',
    pressureDisplay: true,
    spare: 'temporary',
    placard: { front: printed(36, 250), rear: printed(42, 290), spare: printed(60, 420) },
    tire: {
      front: tire('225/50R17 98W XL', 'XL', 51),
      rear: tire('225/50R17 98W XL', 'XL', 51),
      spare: temporarySpare,
    },
    sensor: clampInSensor(433.92, 'Pellowe, second pattern', 62),
    studs: { count: 5, thread: 'M14×1.5', torque: { value: 160, unit: 'N·m' } },
    relearn: connectorRelearn,
    liftNotes: 'Lift at the four marked pads of the sill.',
    sources: {
      placard: placardPhoto('Dunnock 2021'),
      studTorque: makerManual('Pellowe Dunnock 2021 service book, wheels, page 2'),
      frequency: makerManual('Pellowe Dunnock 2021 service book, wheels, page 8'),
    },
  }),
  gloaming: sheet('gloaming', {
    name: 'Ashmoor Gloaming coupe 2022',
    system: 'direct',
    pressureDisplay: true,
    locatesWheels: true,
    spare: 'none',
    staggered: true,
    placard: { front: printed(36, 250), rear: printed(42, 290), spare: null },
    tire: { front: tire('245/40R19', 'XL', 51), rear: tire('275/35R19', 'XL', 51), spare: null },
    sensor: clampInSensor(433.92, 'Ashmoor, third pattern', 71),
    studs: {
      count: 5,
      thread: 'M14×1.5',
      fastener: 'bolt',
      seat: 'ball',
      lockingFastener: true,
      torque: { value: 160, unit: 'N·m' },
    },
    relearn: automaticRelearn(15, 10),
    liftNotes: 'Low: drive on with the long ramps. Use a locating pin, the wheels hang on bolts.',
    sources: {
      placard: placardPhoto('Gloaming 2022'),
      studTorque: makerManual('Ashmoor Gloaming 2022 service book, wheels, page 5'),
      frequency: makerManual('Ashmoor Gloaming 2022 service book, wheels, page 14'),
    },
  }),
  wren: sheet('wren', {
    name: 'Pellowe Wren electric 2023',
    system: 'direct',
    pressureDisplay: true,
    locatesWheels: true,
    spare: 'none',
    placard: { front: printed(42, 290), rear: printed(42, 290), spare: null },
    tire: {
      front: tire('225/50R18 99W XL', 'XL', 51),
      rear: tire('225/50R18 99W XL', 'XL', 51),
      spare: null,
    },
    sensor: clampInSensor(2_400, 'Pellowe, low-power pattern', 62),
    studs: { count: 5, thread: 'M14×1.5', torque: { value: 150, unit: 'N·m' } },
    relearn: automaticRelearn(15, 10),
    liftNotes: 'Ready-off first. Lift only at the four marked points; no pad under the battery.',
    sources: {
      placard: placardPhoto('Wren 2023'),
      studTorque: makerManual('Pellowe Wren 2023 service book, wheels, page 7'),
      frequency: makerManual('Pellowe Wren 2023 service book, wheels, page 12'),
    },
  }),
  pannier: sheet('pannier', {
    name: 'Dorrin Pannier van 2020',
    system: 'direct',
    spare: 'full-size',
    placard: { front: printed(50, 350), rear: printed(72, 500), spare: printed(72, 500) },
    tire: {
      front: tire('LT235/80R17 E', 'LT-E', 80),
      rear: tire('LT235/80R17 E', 'LT-E', 80),
      spare: tire('LT235/80R17 E', 'LT-E', 80),
    },
    sensor: clampInSensor(433.92, 'Dorrin, first pattern', 71),
    studs: { count: 6, thread: 'M14×1.5', torque: { value: 125, unit: 'lbf·ft' } },
    relearn: connectorRelearn,
    liftNotes: 'Loaded vans: ask what is inside before lifting. Lift at the frame.',
    sources: {
      placard: placardPhoto('Pannier 2020'),
      studTorque: unverified(makerManual('Dorrin Pannier 2020 owner handbook, page 240')),
      frequency: makerManual('Dorrin Pannier 2020 service book, wheels, page 10'),
    },
  }),
} as const satisfies Record<string, CompleteSheet>

export type SheetKey = keyof typeof sheets
