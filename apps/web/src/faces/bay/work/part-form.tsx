import type { StockPart } from '@bayledger/contract/settings'
import { partFaults, tooLong } from '../../../lib/fault-words.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { frequencyFor, lotRow, partNumbers, partOption, sensorsFor, useStock } from './stock-here.ts'
import type { WorkFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

/** What is marked on a part is read only where the stock list does not know it. */
const marks: readonly Row[] = [
  {
    kind: 'number',
    key: 'frequency',
    label: 'Frequency on it',
    unit: 'MHz',
    low: 100,
    high: 3_000,
    limits: { whole: 4, decimals: 2 },
    optional: 'not marked',
    asked: true,
  },
  {
    kind: 'choice',
    key: 'stem',
    label: 'Stem on it',
    optional: 'not marked',
    asked: true,
    options: [
      { value: 'snap-in', label: 'Rubber, snap-in' },
      { value: 'clamp-in', label: 'Metal, clamp-in' },
    ],
  },
  {
    kind: 'text',
    key: 'madeMonth',
    label: 'Made in',
    exact: true,
    optional: 'not marked',
    aside: true,
    hint: 'Year and month, as 2025-08.',
    fault: (text) => (/^\d{4}-(0[1-9]|1[0-2])$/.test(text) ? undefined : partFaults.madeMonth),
  },
]

/**
 * The part in hand, matched against the sheet: picked from the stock list, or scanned, or typed as printed on the part.
 * A part that the list knows is what the list says; the ledger compares both.
 */
export function PartForm(props: WorkFormProps) {
  const { state, step } = props
  const stock = useStock(state.locationId)
  const offered = sensorsFor(stock, state.sheet?.sheet ?? null)
  const listed = (values: RowValues): StockPart | undefined =>
    stock.find(({ partNumber }) => partNumber === (values.partNumber ?? '').trim())
  const number: Row = {
    kind: 'text',
    key: 'partNumber',
    label: 'Part number',
    exact: true,
    hint: 'Pick it, or scan or type what is printed on the part itself.',
    suggestions: offered.map(partOption),
    scan: { wanted: 'part', listedParts: partNumbers(stock) },
    fault: (text) => tooLong(text, 60, 'signs'),
  }
  return (
    <WorkRows
      {...props}
      kind="part.drawn"
      rows={(values) => [number, ...(listed(values) ? [] : marks), lotRow('lot', 'Lot', listed(values))]}
      recordWord="Record the part"
      payload={(values) => {
        const part = listed(values)
        return {
          stepKey: step.stepKey,
          wheel: step.wheel,
          partNumber: (values.partNumber ?? '').trim(),
          lot: values.lot?.trim() || null,
          madeMonth: part ? part.madeMonth : values.madeMonth || null,
          quantity: 1,
          matches: part
            ? { frequencyMHz: frequencyFor(part, state.sheet?.sheet ?? null), stem: part.stem }
            : {
                frequencyMHz: numberFrom(values.frequency ?? ''),
                stem: values.stem === 'snap-in' || values.stem === 'clamp-in' ? values.stem : null,
              },
        }
      }}
    />
  )
}
