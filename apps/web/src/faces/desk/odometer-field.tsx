import { CheckGroup } from '../../ui/choice-group.tsx'
import { NumberField } from '../../ui/number-field.tsx'
import type { TypedFigure } from '../../ui/number-text.ts'
import { isUnlikely, type JudgeOdometer, odometerFault } from './odometer.ts'

type OdometerProps = {
  label: string
  value: TypedFigure
  judge: JudgeOdometer
  confirmed: boolean
  onChange: (typed: TypedFigure) => void
  onConfirm: (confirmed: boolean) => void
}

/** An odometer in miles. A figure that cannot be right is refused here in words; an unlikely one is read twice. */
export function OdometerField({ label, value, judge, confirmed, onChange, onConfirm }: OdometerProps) {
  return (
    <>
      <NumberField
        label={label}
        unit="mi"
        value={value}
        fault={value === 'unreadable' ? undefined : odometerFault(value, judge, confirmed)}
        onChange={(typed) => {
          onChange(typed)
          onConfirm(false)
        }}
      />
      {isUnlikely(value, judge) ? (
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
