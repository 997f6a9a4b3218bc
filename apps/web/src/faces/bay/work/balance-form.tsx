import { balanceRows, balanceWords } from './balance-rows.ts'
import type { WorkFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

/** What is left on a wheel after balancing, each side as the machine shows it. */
export function BalanceForm(props: WorkFormProps) {
  return (
    <WorkRows
      {...props}
      kind="step.closed"
      rows={balanceRows}
      recordsItself
      recordWord="Done: record"
      payload={(values) => {
        const value = balanceWords(values)
        return value === null ? null : { stepKey: props.step.stepKey, value }
      }}
    />
  )
}
