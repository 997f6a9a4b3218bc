import type { RotationRefused } from '@bayledger/ledger/questions/rotating-tires'
import type { OrderState } from '@bayledger/ledger/state'
import type { RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import type { Step } from '@bayledger/reckoning/step'
import { patterns } from '@bayledger/wording/en/rotation'
import { stillAllowed, tiresRefuse } from '@bayledger/wording/en/rotation-refusals'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { useRecord } from '../record/use-record.ts'
import { stepTitle } from './step-words.ts'

type RotationRefusalProps = {
  state: OrderState
  step: Step
  pattern: RotationPattern
  refused: RotationRefused
  /** The desk knows, and has not decided yet. */
  isTold: boolean
  onAgain: () => void
}

/** What the tires refuse and what they would allow. One press tells it to the desk in the same words. */
export function RotationRefusal({ state, step, pattern, refused, isTold, onAgain }: RotationRefusalProps) {
  const { recordAll, busy, problem } = useRecord(state.orderId)
  const [why, allowed] = [tiresRefuse(refused.refusals), stillAllowed(refused.allowed)]
  const tell = () => {
    const words = personal(`The tires do not allow the rotation "${patterns[pattern]}". ${why} ${allowed}`)
    const draft = draftEntry(state.orderId, 'trouble.found', {
      stepKey: step.stepKey,
      wheel: null,
      what: 'other',
      words: words.digest,
    })
    return recordAll([draft], 'rotation stopped', { sides: [words], form: null })
  }
  return (
    <StepScreen
      title={stepTitle(step)}
      beside={<Button onClick={onAgain}>Look at the tires again</Button>}
      how={
        <>
          <p>
            <strong>The tires do not allow this rotation.</strong> {why}
          </p>
          <p>{allowed}</p>
          <p>
            {isTold
              ? 'The desk knows. It decides with the customer; move no wheel until then.'
              : 'Move no wheel. The desk decides with the customer; the vehicle stays off the road until then.'}
          </p>
        </>
      }
      problem={problem}
      {...(isTold
        ? {}
        : {
            pad: (
              <Button look="wide" busy={busy} onClick={tell}>
                Stop: tell the desk
              </Button>
            ),
          })}
    />
  )
}
