import { comebackCauses } from '@bayledger/wording/en/comeback-causes'
import type { ReadOrder } from '../../../ledger/order.ts'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { earlierWords } from './earlier-words.ts'
import './comeback-screen.css'

type ComebackScreenProps = {
  order: Pick<ReadOrder, 'state' | 'history' | 'personalText'>
  onBack: () => void
}

/** Why the vehicle came back after our work, as the desk recorded it, and what the earlier visits left. */
export function ComebackScreen({ order, onBack }: ComebackScreenProps) {
  const { comeback } = order.state
  const wheels = order.history === null ? null : earlierWords(order.history)
  return (
    <StepScreen
      title="Back after our work"
      beside={<Button onClick={onBack}>Back to the step</Button>}
      takesFocus
    >
      <dl className="comeback">
        <div>
          <dt>cause</dt>
          <dd>
            {comeback === null
              ? 'Not recorded yet. The desk records it once the findings are confirmed.'
              : comebackCauses[comeback.cause]}
            {comeback?.words ? `: ${order.personalText(comeback.words)}` : ''}
          </dd>
        </div>
        {(wheels ?? []).map(({ name, says }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      {wheels === null ? (
        <p>This tablet has not read what the earlier visits hold.</p>
      ) : wheels.length === 0 ? (
        <p>The records of the earlier visits hold no reading and no work on a wheel.</p>
      ) : null}
    </StepScreen>
  )
}
