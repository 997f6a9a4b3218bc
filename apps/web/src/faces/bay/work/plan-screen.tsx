import { readySteps } from '@bayledger/ledger/questions/gates'
import { isSetAside } from '@bayledger/ledger/questions/passed-steps'
import type { OrderState } from '@bayledger/ledger/state'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { whyShut } from './choose-step.ts'
import { stepTitle } from './step-words.ts'
import './plan-screen.css'

type PlanScreenProps = { state: OrderState; onOpen: (stepKey: string) => void; onBack: () => void }

/** Every step in its order: done, set aside, to be done now, or shut with the reason. */
export function PlanScreen({ state, onOpen, onBack }: PlanScreenProps) {
  const steps = state.plan?.plan.steps ?? []
  const ready = new Set(readySteps(state).map(({ stepKey }) => stepKey))
  const done = steps.filter(({ stepKey }) => state.closed[stepKey]).length
  return (
    <StepScreen
      title={`Job plan: ${done} of ${steps.length} done`}
      beside={<Button onClick={onBack}>Back to the step</Button>}
    >
      <ol className="plan-steps">
        {steps.map((step) => {
          const shut = whyShut(state, step)
          return (
            <li key={step.stepKey} className="plan-step">
              {state.closed[step.stepKey] ? (
                <>
                  <span aria-hidden="true">✓</span> <span>{stepTitle(step)}</span>
                  <span className="quiet">done</span>
                </>
              ) : isSetAside(state, step) ? (
                <>
                  <span aria-hidden="true">–</span> <s>{stepTitle(step)}</s>
                  <span className="quiet">set aside</span>
                </>
              ) : ready.has(step.stepKey) ? (
                <>
                  <span aria-hidden="true">▸</span>
                  <Button onClick={() => onOpen(step.stepKey)}>{stepTitle(step)}</Button>
                </>
              ) : (
                <>
                  <span />
                  <span>
                    {stepTitle(step)} <span className="plan-shut">{shut}</span>
                  </span>
                </>
              )}
            </li>
          )
        })}
      </ol>
    </StepScreen>
  )
}
