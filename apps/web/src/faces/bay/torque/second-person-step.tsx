import type { Step } from '@bayledger/reckoning/step'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { askForPerson } from '../session/lock-store.ts'
import { stepTitle } from '../work/step-words.ts'

/** Says that whoever did the work cannot be the second person, and lets the second person sign in. */
export function SecondPersonStep({ step, why }: { step: Step; why: string }) {
  return (
    <StepScreen
      title={stepTitle(step)}
      how={why}
      pad={
        <Button look="wide" onClick={askForPerson}>
          Second person: sign in
        </Button>
      }
    />
  )
}
