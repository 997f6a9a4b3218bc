import { InstrumentContent } from '@bayledger/contract/instruments'
import { choiceCell, dayCell, maybe, numberCell, textCell, yesNoCell } from '../../../core/csv/cells.ts'
import type { RowOf } from '../../../core/csv/csv-table.ts'

const scale = maybe(numberCell({ from: 0.1, to: 2_000, unit: '' }))

/** What a file of wrenches and gauges holds; what only the other kind has stays empty. */
export const instrumentColumns = {
  code: textCell(20),
  kind: choiceCell(['wrench', 'gauge']),
  place: textCell(80),
  range_low: scale,
  range_high: scale,
  range_unit: maybe(choiceCell(['lbf·ft', 'lbf·in', 'N·m'])),
  accuracy_percent: maybe(numberCell({ from: 0.1, to: 20, unit: '%' })),
  offset_psi: maybe(numberCell({ from: -20, to: 20, unit: 'psi' })),
  checked_on: maybe(dayCell()),
  calibrated_on: maybe(dayCell()),
  due_on: maybe(dayCell()),
  certificate: maybe(textCell(60)),
  quarantined: yesNoCell(),
  why: maybe(textCell(200)),
}
export type InstrumentRow = RowOf<typeof instrumentColumns>
type Column = keyof InstrumentRow

/** The column in which a field of an instrument stands. */
export const columnOf: Readonly<Record<string, Column>> = {
  code: 'code',
  kind: 'kind',
  locationId: 'place',
  rangeLow: 'range_low',
  rangeHigh: 'range_high',
  rangeUnit: 'range_unit',
  accuracyPercent: 'accuracy_percent',
  offsetPsi: 'offset_psi',
  checkedOn: 'checked_on',
  calibratedOn: 'calibrated_on',
  dueOn: 'due_on',
  certificate: 'certificate',
  quarantined: 'quarantined',
  why: 'why',
}

/** An instrument as a row; `place` by its name, because a file is read by people. */
export const rowOfInstrument = (content: InstrumentContent, place: string): InstrumentRow => {
  const { code, kind, quarantined, why, dueOn } = content
  const wrench = content.kind === 'wrench' ? content : null
  const gauge = content.kind === 'gauge' ? content : null
  return {
    code,
    kind,
    place,
    range_low: wrench?.rangeLow ?? null,
    range_high: wrench?.rangeHigh ?? null,
    range_unit: wrench?.rangeUnit ?? null,
    accuracy_percent: wrench?.accuracyPercent ?? null,
    offset_psi: gauge?.offsetPsi ?? null,
    checked_on: gauge?.checkedOn ?? null,
    calibrated_on: wrench?.calibratedOn ?? null,
    due_on: dueOn,
    certificate: wrench?.certificate ?? null,
    quarantined,
    why,
  }
}

/** A row as an instrument, or the fields of it that cannot be. */
export const instrumentOfRow = (row: InstrumentRow, locationId: string) =>
  InstrumentContent.safeParse({
    kind: row.kind,
    code: row.code,
    locationId,
    quarantined: row.quarantined,
    why: row.why,
    dueOn: row.due_on,
    ...(row.kind === 'wrench'
      ? {
          rangeLow: row.range_low,
          rangeHigh: row.range_high,
          rangeUnit: row.range_unit,
          accuracyPercent: row.accuracy_percent,
          calibratedOn: row.calibrated_on,
          certificate: row.certificate,
        }
      : { offsetPsi: row.offset_psi, checkedOn: row.checked_on }),
  })
