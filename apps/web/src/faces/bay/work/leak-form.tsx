import type { Row } from '../form/rows.ts'
import { StepTimer } from '../form/step-timer.tsx'
import { howWords } from './step-words.ts'
import type { WheelFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

const places = ['stem', 'core', 'bead', 'tread', 'sidewall', 'rim'] as const

const rows: readonly Row[] = [
  {
    kind: 'choice',
    key: 'leak',
    label: 'Bubbles',
    options: [
      { value: 'tight', label: 'None: it is tight' },
      ...places.map((place) => ({ value: place, label: `At the ${place}` })),
    ],
  },
]

/** As long as soapy water is watched (common practice, no source). */
const leakSeconds = 120

/** A leak that was found is recorded and keeps the step open. */
export function LeakForm(props: WheelFormProps) {
  const { state, step, wheel } = props
  const before = state.work[wheel]?.leak
  return (
    <WorkRows
      {...props}
      kind="leak.checked"
      beside={
        <StepTimer
          watchKey={`${state.orderId}/${step.stepKey}/${before?.written.entryId ?? 'first'}`}
          label="Soapy water"
          target={leakSeconds}
        />
      }
      rows={() => rows}
      recordsItself
      recordWord="Record the leak check"
      how={
        before && !before.tight
          ? `It leaked at the ${before.where ?? 'tire'}. ${howWords(step)}`
          : howWords(step)
      }
      payload={(values) => ({
        stepKey: step.stepKey,
        wheel,
        tight: values.leak === 'tight',
        where: places.find((place) => place === values.leak) ?? null,
      })}
    />
  )
}
