import { balancedFor } from '@bayledger/reckoning/wheel/balance-left'
import { balanceLeft, balanceRows } from './balance-rows.ts'
import type { WorkFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

/** What is left on a wheel after balancing, each side as the machine shows it. */
export function BalanceForm(props: WorkFormProps) {
  const { state, step } = props
  const on = balancedFor(state.sheet?.sheet, step.wheel ?? 'SP')
  return (
    <WorkRows
      {...props}
      kind="step.closed"
      rows={(values) => balanceRows(values, on)}
      recordsItself
      recordWord="Done: record"
      payload={(values) => {
        const value = balanceLeft(values, on)
        return value === null ? null : { stepKey: step.stepKey, value }
      }}
    />
  )
}
