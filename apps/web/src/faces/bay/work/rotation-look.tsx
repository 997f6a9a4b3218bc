import type { OrderState } from '@bayledger/ledger/state'
import type { RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import type { Step } from '@bayledger/reckoning/step'
import { RotationDrawing } from '../../../features/plan/rotation-drawing.tsx'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { cautionWords, howWords, stepTitle } from './step-words.ts'

type RotationLookProps = {
  state: OrderState
  step: Step
  pattern: RotationPattern
  onSeen: () => void
}

/** Where each wheel goes, on a screen of its own before anybody says that the tires allow it. */
export function RotationLook({ state, step, pattern, onSeen }: RotationLookProps) {
  return (
    <StepScreen
      title={stepTitle(step)}
      how={howWords(step)}
      caution={cautionWords(step)}
      pad={
        <Button look="wide" onClick={onSeen}>
          I have seen it: go on
        </Button>
      }
    >
      <RotationDrawing state={state} pattern={pattern} />
    </StepScreen>
  )
}
