import { numberFrom } from '../../../ui/number-text.ts'
import type { Row } from '../form/rows.ts'
import type { WorkFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

const rows: readonly Row[] = [
  {
    kind: 'text',
    key: 'partNumber',
    label: 'Part number',
    exact: true,
    hint: 'Scan or type what stands on the part itself.',
    fault: (text) => (text.length > 60 ? 'Keep it to 60 signs.' : undefined),
  },
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
  { kind: 'text', key: 'lot', label: 'Lot', exact: true, optional: 'not marked' },
  {
    kind: 'text',
    key: 'madeMonth',
    label: 'Made in',
    exact: true,
    optional: 'not marked',
    hint: 'Year and month, as 2025-08.',
    fault: (text) =>
      /^\d{4}-(0[1-9]|1[0-2])$/.test(text) ? undefined : 'Type year and month like 2025-08, or leave it out.',
  },
]

/** Matches the part in hand against the sheet by the number printed on it. */
export function PartForm(props: WorkFormProps) {
  const { step } = props
  return (
    <WorkRows
      {...props}
      kind="part.drawn"
      rows={() => rows}
      recordWord="Record the part"
      payload={(values) => ({
        stepKey: step.stepKey,
        wheel: step.wheel,
        partNumber: (values.partNumber ?? '').trim(),
        lot: values.lot?.trim() || null,
        madeMonth: values.madeMonth || null,
        quantity: 1,
        matches: {
          frequencyMHz: numberFrom(values.frequency ?? ''),
          stem: values.stem === 'snap-in' || values.stem === 'clamp-in' ? values.stem : null,
        },
      })}
    />
  )
}
