import { patternOf } from '@bayledger/ledger/questions/pattern-of'
import { Suspense } from 'react'
import { tooLong } from '../../../lib/fault-words.ts'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { useRecord } from '../record/use-record.ts'
import { closingWords } from './closing-words.ts'
import { FigureButton } from './figure-standing.tsx'
import { BalanceForm } from './lazy-balance-form.ts'
import { RotationStep } from './lazy-rotation-step.ts'
import { StepFigureView } from './step-figure.tsx'
import { cautionWords, howWords, stepTitle, undoWords } from './step-words.ts'
import type { WorkFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

/** A step that is only done; where something was found, its place or figure is noted. */
export function CloseForm(props: WorkFormProps) {
  const { state, step, onDone, onFigure } = props
  const { record, busy, problem } = useRecord(state.orderId)
  if (step.code === 'balance-wheel')
    return (
      <Suspense fallback={null}>
        <BalanceForm {...props} />
      </Suspense>
    )
  const pattern = patternOf(step)
  if (pattern !== null)
    return (
      <Suspense fallback={null}>
        <RotationStep {...props} pattern={pattern} />
      </Suspense>
    )
  if (step.needs.includes('value'))
    return (
      <WorkRows
        {...props}
        kind="step.closed"
        rows={() => [
          {
            kind: 'text',
            key: 'value',
            label: 'What was found or used',
            suggestions: closingWords(state, step).map((words) => ({ value: words, label: words })),
            fault: (text) => tooLong(text, 120),
          },
        ]}
        // A word of the shop that is picked says all there is to say; undo takes it back.
        recordsItself
        recordWord="Done: record"
        payload={(values) => ({ stepKey: step.stepKey, value: (values.value ?? '').trim() })}
      />
    )
  return (
    <StepScreen
      title={stepTitle(step)}
      how={howWords(step)}
      caution={cautionWords(step)}
      problem={problem}
      {...(step.code === 'lift-vehicle'
        ? { beside: <FigureButton state={state} figure="lifting" onFigure={onFigure} /> }
        : {})}
      {...(step.figure === null ? {} : { figure: <StepFigureView state={state} step={step} /> })}
      pad={
        <Button
          look="wide"
          busy={busy}
          onClick={async () => {
            if (await record('step.closed', { stepKey: step.stepKey, value: null }, undoWords(step), null))
              onDone()
          }}
        >
          Done
        </Button>
      }
    />
  )
}
