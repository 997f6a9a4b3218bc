import type { OrderState } from '@bayledger/ledger/state'
import { RowForm } from '../form/row-form.tsx'
import { useRecord } from '../record/use-record.ts'
import { partNumbers, useStock } from '../work/stock-here.ts'
import { laidOut, moduleReadOf, moduleRows, rowsAsRead } from './module-rows.ts'

type ModuleFormProps = {
  state: OrderState
  phase: 'arrival' | 'closing'
  stepKey: string | null
  title: string
  how: string
  /** One more row is to be read; the earlier readings are filled in. */
  row?: string | undefined
  onDone: () => void
}

/** What the vehicle has stored: IDs by position and trouble codes, as shown. */
export function ModuleForm({ state, phase, stepKey, title, how, row, onDone }: ModuleFormProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  const listedParts = partNumbers(useStock(state.locationId))
  return (
    <RowForm
      draftKey={`${state.orderId}/${stepKey ?? 'module'}`}
      title={title}
      how={how}
      rows={(values) => moduleRows(state, values, phase, listedParts)}
      derive={(values) => laidOut(state, values)}
      recordsItself
      blank={row === undefined ? {} : rowsAsRead(state, state[phase].module)}
      firstRow={row}
      recordWord="Record what is stored"
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        const taken = await record(
          'module.read',
          { phase, stepKey, ...moduleReadOf(state, values) },
          'stored IDs',
          form,
        )
        if (taken) onDone()
        return taken
      }}
    />
  )
}
