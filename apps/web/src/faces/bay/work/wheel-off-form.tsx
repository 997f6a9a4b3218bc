import { HoldButton } from '../../../ui/hold-button.tsx'
import { useDraft } from '../form/draft-store.ts'
import { StepScreen } from '../form/step-screen.tsx'
import { useRecord } from '../record/use-record.ts'
import { cautionWords, howWords, stepTitle } from './step-words.ts'
import type { WheelFormProps } from './work-form.ts'
import '../form/row-form.css'

const remarks = [
  { value: null, label: 'Came off easily' },
  { value: 'seized', label: 'Seized' },
  { value: 'over-tight', label: 'Over-tight' },
  { value: 'stud-damaged', label: 'Stud damaged' },
] as const
type Remark = (typeof remarks)[number]['value']

/** Removing a wheel takes a long press; until it is torqued and checked, no warning on the screen is louder. */
export function WheelOffForm({ state, step, wheel, onDone }: WheelFormProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  const key = `${state.orderId}/${step.stepKey}`
  const { draft, change, discard } = useDraft<{ remark: Remark }>(key, { remark: null })
  return (
    <StepScreen
      title={stepTitle(step)}
      how={howWords(step)}
      caution={cautionWords(step)}
      problem={problem}
      pad={
        <HoldButton
          label={`${wheel} wheel is off · hold to record`}
          busy={busy}
          onHeld={async () => {
            const entry = { stepKey: step.stepKey, wheel, remark: draft.remark }
            if (await record('wheel.removed', entry, `${wheel} off`, { key, content: draft })) {
              discard()
              onDone()
            }
          }}
        />
      }
    >
      <ul className="row-options">
        {remarks.map(({ value, label }) => (
          <li key={label}>
            <button
              type="button"
              className="row-option"
              aria-pressed={draft.remark === value}
              onClick={() => change({ remark: value })}
            >
              {label}
            </button>
          </li>
        ))}
      </ul>
    </StepScreen>
  )
}
