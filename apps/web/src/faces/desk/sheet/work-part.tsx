import { roadGate } from '@bayledger/ledger/questions/gates'
import { keptClosedBy } from '@bayledger/ledger/questions/passed-steps'
import { isFixed } from '@bayledger/ledger/questions/verdicts'
import type { OrderState } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import { gates } from '@bayledger/wording/en/gates'
import { steps as stepWords } from '@bayledger/wording/en/steps'
import { verdicts } from '@bayledger/wording/en/verdicts'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { gateWords } from '@bayledger/wording/gates'
import { stepDoes } from '@bayledger/wording/steps'
import { fixedSentence } from '@bayledger/wording/verdicts'
import { useStaffNames } from '../../../features/people/queries.ts'
import { FoldingSection } from '../../../ui/folding-section.tsx'
import { Section } from '../../../ui/section.tsx'
import { useTimes } from '../shop-clock.ts'
import type { OrderPart } from './order-part.ts'
import { settledWork } from './settled.ts'
import './work-part.css'

/** The computed steps with who closed each, and how far the cure is proven. */
export function WorkPart({ order }: OrderPart) {
  const { plan } = order.state
  if (plan === null) return null
  const steps = plan.plan.steps
  const closed = steps.filter(({ stepKey }) => order.state.closed[stepKey]).length
  const gate = roadGate(order.state)
  return (
    <>
      <FoldingSection
        title="Work"
        id="work"
        note={`${closed} of ${steps.length} steps closed`}
        settled={settledWork(order)}
      >
        {gate.length === 0 ? null : (
          <ul className="gate">
            {gate.map((reason) => (
              <li key={`${reason.code} ${reason.wheel}`}>
                <strong>{gateWords(gates, reason)}</strong>
              </li>
            ))}
          </ul>
        )}
        <ol className="steps">
          {steps.map((step) => (
            <StepLine key={step.stepKey} step={step} order={order} />
          ))}
        </ol>
      </FoldingSection>
      <Section title="Proof" id="proof">
        <p>{proofSentence(order.state)}</p>
      </Section>
    </>
  )
}

function StepLine({ step, order }: OrderPart & { step: Step }) {
  const nameOf = useStaffNames()
  const { when } = useTimes()
  const closing = order.state.closed[step.stepKey]
  const kept = keptClosedBy(order.state, step)
  const aside = order.state.setAside[step.stepKey] ?? (kept && order.state.setAside[kept.stepKey])
  const by = closing?.written.by
  return (
    <li className={closing ? 'step step-closed' : 'step'}>
      <span>
        {closing ? (
          <svg viewBox="0 0 16 16" className="step-tick" role="img" aria-label="closed">
            <path d="M2 8.5 6.2 13 14 3" />
          </svg>
        ) : null}
        {stepDoes(stepWords, step)}
        {step.wheel === null ? '' : `, ${wheelNames[step.wheel]}`}
      </span>
      <span className="quiet">
        {closing
          ? `${when(closing.written.writtenAt)}${by?.kind === 'staff' ? `, ${nameOf(by.staffId)}` : ''}`
          : aside
            ? `set aside: ${order.personalText(aside.reason)}`
            : 'open'}
      </span>
    </li>
  )
}

export const proofSentence = (state: OrderState): string => fixedSentence(verdicts, isFixed(state))
