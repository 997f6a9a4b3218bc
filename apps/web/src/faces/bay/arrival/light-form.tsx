import type { OrderState, VehicleCheck } from '@bayledger/ledger/state'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { useWatch } from '../clock/use-watch.ts'
import { RowForm } from '../form/row-form.tsx'
import type { Row } from '../form/rows.ts'
import { StepTimer } from '../form/step-timer.tsx'
import { useRecord } from '../record/use-record.ts'
import { behaviorOptions, lampOptions } from './light-options.ts'

const lampRow: Row = { kind: 'choice', key: 'lampCheck', label: 'Lamp check', options: lampOptions }
const behaviorRow: Row = {
  kind: 'choice',
  key: 'behavior',
  label: 'With the engine on',
  options: behaviorOptions,
}

type LightFormProps = {
  state: OrderState
  phase: 'arrival' | 'closing'
  stepKey: string | null
  title: string
  row?: string | undefined
  onDone: () => void
}

/** How long the light is watched: a flash at the start lasts a minute or more (common practice, no source). */
const watchSeconds = 120

/** What the warning light does, seen by us: first the lamp check at key-on, then with the engine running. */
export function LightForm({ state, phase, stepKey, title, row, onDone }: LightFormProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  const key = `${state.orderId}/${stepKey ?? 'light'}`
  const afterDrive = phase === 'closing' ? lampAfterDrive(state) : null
  const watchKey = `${key}/${state[phase].telltale?.written.entryId ?? 'first'}`
  const { stop } = useWatch(watchKey)
  return (
    <RowForm
      draftKey={key}
      title={title}
      beside={<StepTimer watchKey={watchKey} label="Watch the light" target={watchSeconds} />}
      how={
        afterDrive === null
          ? 'Key on, engine off: does the warning light come on? Then start and watch two minutes.'
          : 'The lamp check was made after the drive. Start the engine and watch two minutes.'
      }
      rows={() => (afterDrive === null ? [lampRow, behaviorRow] : [behaviorRow])}
      blank={row === undefined ? {} : asSeen(state[phase].telltale, row)}
      firstRow={row}
      recordsItself
      recordWord="Record the light"
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        const taken = await record(
          'telltale.observed',
          {
            phase,
            stepKey,
            lampCheck: afterDrive ?? (values.lampCheck === 'dark' ? 'dark' : 'lights'),
            behavior: behaviorOptions.find(({ value }) => value === values.behavior)?.value ?? null,
            timed: stop(),
          },
          'warning light',
          form,
        )
        if (taken) onDone()
        return taken
      }}
    />
  )
}

/** The lamp check at the end of the last drive, if it was made: it is not asked twice. */
const lampAfterDrive = ({ drives }: OrderState): 'lights' | 'dark' | null => {
  const last = drives.at(-1)
  return last === undefined ? null : last.lampCheckAfter === 'dark' ? 'dark' : 'lights'
}

/** What was seen of it already, but for the row that is looked at now. */
const asSeen = (seen: VehicleCheck['telltale'], row: string): RowValues => ({
  ...(seen?.lampCheck && row !== 'lampCheck' ? { lampCheck: seen.lampCheck } : {}),
  ...(seen?.behavior && row !== 'behavior' ? { behavior: seen.behavior } : {}),
})
