import type { DemoCalendar } from './calendar.ts'
import { demoId } from './seeded.ts'

/** What a part is, so that a scan can be matched to the sheet. `madeMonth` starts the 24 months of its shelf life. */
export type PartFamily = {
  readonly kind: 'sensor' | 'kit' | 'repair-unit'
  readonly words: string
  readonly frequencyMHz: number | null
  /** A dual part's second frequency. */
  readonly alsoMHz: number | null
  readonly stem: 'snap-in' | 'clamp-in' | null
  readonly priceCode: string
  readonly madeMonth: string | null
  readonly blocked: string | null
}

export type DemoStockItem = {
  readonly id: string
  readonly partNumber: string
  readonly family: PartFamily
  readonly onHand: number
  /** Of its last delivery; `null` where nobody wrote it down. */
  readonly lot: string | null
}

const lots: Readonly<Record<string, string>> = {
  'TS-315-C': 'K7714',
  'TS-433-C': 'L2291',
  'TS-433-S': 'M0458',
  'TS-DUAL-C': 'D3302',
}

const item = (partNumber: string, onHand: number, family: PartFamily): DemoStockItem => ({
  id: demoId(`stock/${partNumber}`),
  partNumber,
  family,
  onHand,
  lot: lots[partNumber] ?? null,
})

const sensor = (
  words: string,
  frequencyMHz: number,
  stem: 'snap-in' | 'clamp-in',
  priceCode: string,
  madeMonth: string | null,
  blocked: string | null = null,
): PartFamily => ({ kind: 'sensor', words, frequencyMHz, alsoMHz: null, stem, priceCode, madeMonth, blocked })

const supply = (
  kind: 'kit' | 'repair-unit',
  words: string,
  stem: PartFamily['stem'],
  priceCode: string,
): PartFamily => ({
  kind,
  words,
  frequencyMHz: null,
  alsoMHz: null,
  stem,
  priceCode,
  madeMonth: null,
  blocked: null,
})

/** The shelf and the drawer of Tamber Street. */
export const stock = (calendar: DemoCalendar): readonly DemoStockItem[] => [
  item(
    'TS-315-C',
    3,
    sensor('Sensor 315 MHz, clamp-in', 315, 'clamp-in', 'sensor.clamp-in', calendar.inMonth('2025-08')),
  ),
  item(
    'TS-433-C',
    2,
    sensor('Sensor 433.92 MHz, clamp-in', 433.92, 'clamp-in', 'sensor.clamp-in', calendar.inMonth('2025-06')),
  ),
  item(
    'TS-433-S',
    5,
    sensor('Sensor 433.92 MHz, snap-in', 433.92, 'snap-in', 'sensor.snap-in', calendar.inMonth('2025-09')),
  ),
  item(
    'TS-433-S-2311',
    1,
    sensor(
      'Sensor 433.92 MHz, snap-in',
      433.92,
      'snap-in',
      'sensor.snap-in',
      calendar.inMonth('2023-11'),
      'Made more than 24 months ago: not for fitting.',
    ),
  ),
  item(
    'TS-433-S-SET',
    1,
    sensor(
      'Sensor 433.92 MHz, snap-in, programmed',
      433.92,
      'snap-in',
      'sensor.snap-in',
      calendar.inMonth('2025-09'),
      'Programmed for a Vantrell Linnet 2019: wipe it before it counts as blank.',
    ),
  ),
  item('TS-DUAL-C', 4, {
    ...sensor(
      'Sensor 315 or 433.92 MHz, clamp-in, programmable',
      315,
      'clamp-in',
      'sensor.clamp-in',
      calendar.inMonth('2025-10'),
    ),
    alsoMHz: 433.92,
  }),
  item('TS-2400-C', 0, sensor('Sensor 2.4 GHz, clamp-in', 2_400, 'clamp-in', 'sensor.two-point-four', null)),
  item('TK-C', 22, supply('kit', 'Service kit, clamp-in', 'clamp-in', 'kit.clamp-in')),
  item('TK-S', 31, supply('kit', 'Service kit, snap-in', 'snap-in', 'kit.snap-in')),
  item('TR-PP', 14, supply('repair-unit', 'Plug-patch unit', null, 'repair.plug-patch')),
]
