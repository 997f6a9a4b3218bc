import type { SensorAnswer } from '@bayledger/ledger/subjects/arrival/kinds'
import type { TableWording } from './table.ts'

type Battery = NonNullable<Extract<SensorAnswer, { answer: 'answered' }>['battery']>

/** The readings of one whole-vehicle check. IDs are the last four characters. */
export type ReportReadingsWording = {
  readonly titles: Readonly<Record<'arrival' | 'closing', string>>
  readonly noneAfter: string
  readonly readings: TableWording<
    'wheel' | 'gauge' | 'sensor' | 'temperature' | 'battery' | 'frequency' | 'answer' | 'id' | 'stored'
  >
  readonly when: TableWording<'wheel' | 'gauge' | 'gauged' | 'sensorRead'>
  /** A gauge by its code, and what it showed, where the pressure beside it is corrected by its offset. */
  readonly gaugeRead: (code: string, read: string) => string
  readonly gaugeCorrected: string
  readonly asSet: (pressure: string) => string
  readonly noAnswer: string
  readonly answers: string
  /** On page one, where the cell also names the ID. */
  readonly answersAs: (id: string | null) => string
  readonly battery: Readonly<Record<Battery, string>>
  readonly otherFrequency: (found: string, wanted: string) => string
  readonly stored: {
    readonly nothing: string
    readonly none: string
    /** What the vehicle stored, where the sensor's own ID is not known. */
    readonly id: (id: string) => string
    readonly same: string
    readonly other: (id: string) => string
  }
  readonly field: (field: string, why: string) => string
  readonly notPossible: (fields: readonly string[]) => string
  /** Trouble codes: each as the vehicle shows it, its class, and its wheel by name. */
  readonly code: (of: {
    readonly text: string | null
    readonly class: string
    readonly wheel: string | null
  }) => string
  readonly codes: (codes: readonly string[]) => string
  readonly codesNotChecked: string
  readonly codesUnreadable: (why: string | null) => string
  readonly labelNotVerified: (pressure: string) => string
}
