import type { Distance } from '@bayledger/reckoning/quantity'
import { CheckGroup } from '../../ui/choice-group.tsx'
import { NumberField } from '../../ui/number-field.tsx'
import type { TypedFigure } from '../../ui/number-text.ts'
import { isUnlikely, odometerFault } from './odometer.ts'

type OdometerProps = {
  label: string
  value: TypedFigure
  /** What it read last in this order. */
  before: Distance | null
  confirmed: boolean
  onChange: (typed: TypedFigure) => void
  onConfirm: (confirmed: boolean) => void
}

/** An odometer in miles. A figure that cannot be right is refused here in words; an unlikely one is read twice. */
export function OdometerField({ label, value, before, confirmed, onChange, onConfirm }: OdometerProps) {
  return (
    <>
      <NumberField
        label={label}
        unit="mi"
        value={value}
        fault={value === 'unreadable' ? undefined : odometerFault(value, before, confirmed)}
        onChange={(typed) => {
          onChange(typed)
          onConfirm(false)
        }}
      />
      {isUnlikely(value, before) ? (
        <CheckGroup
          label="Read again"
          options={[{ value: 'twice', label: 'I read the odometer a second time; it says so' }]}
          values={confirmed ? ['twice'] : []}
          onChange={(values) => onConfirm(values.length > 0)}
        />
      ) : null}
    </>
  )
}
