import type { OrderState, VehicleCheck } from '@bayledger/ledger/state'
import { RowForm } from '../form/row-form.tsx'
import type { Row, RowValues } from '../form/rows.ts'
import { useRecord } from '../record/use-record.ts'
import { behaviorOptions, lampOptions } from './light-options.ts'

const rows: readonly Row[] = [
  { kind: 'choice', key: 'lampCheck', label: 'Lamp check', options: lampOptions },
  { kind: 'choice', key: 'behavior', label: 'With the engine on', options: behaviorOptions },
]

type LightFormProps = {
  state: OrderState
  phase: 'arrival' | 'closing'
  stepKey: string | null
  title: string
  row?: string | undefined
  onDone: () => void
}

/** What the warning light does, seen by us: first the lamp check at key-on, then with the engine running. */
export function LightForm({ state, phase, stepKey, title, row, onDone }: LightFormProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  return (
    <RowForm
      draftKey={`${state.orderId}/${stepKey ?? 'light'}`}
      title={title}
      how="Key on, engine off: does the warning light come on? Then start and watch two minutes."
      rows={() => rows}
      blank={row === undefined ? {} : asSeen(state[phase].telltale, row)}
      firstRow={row}
      recordWord="Record the light"
      busy={busy}
      problem={problem}
      onRecord={async (values, restore) => {
        const taken = await record(
          'telltale.observed',
          {
            phase,
            stepKey,
            lampCheck: values.lampCheck === 'dark' ? 'dark' : 'lights',
            behavior: behaviorOptions.find(({ value }) => value === values.behavior)?.value ?? null,
          },
          'warning light',
          restore,
        )
        if (taken) onDone()
        return taken
      }}
    />
  )
}

/** What was seen of it already, but for the row that is looked at now. */
const asSeen = (seen: VehicleCheck['telltale'], row: string): RowValues => ({
  ...(seen?.lampCheck && row !== 'lampCheck' ? { lampCheck: seen.lampCheck } : {}),
  ...(seen?.behavior && row !== 'behavior' ? { behavior: seen.behavior } : {}),
})
