import { digestOf } from '@bayledger/ledger/digests'
import { hasFact } from '@bayledger/ledger/questions/skipped-checks'
import type { OrderState } from '@bayledger/ledger/state'
import type { NextCheck } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import { checks } from '@bayledger/wording/en/checks'
import { wheels } from '@bayledger/wording/en/wheels'
import { askFor } from '@bayledger/wording/worded-diagnosis'
import { useState } from 'react'
import type { ArrivalTask } from '../../../features/arrival/arrival-tasks.ts'
import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { Button } from '../../../ui/button.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { useRecord } from '../record/use-record.ts'
import { BayFindings } from './bay-findings.tsx'
import { nextToCheck } from './next-to-check.ts'
import { OwnFindingForm } from './own-finding-form.tsx'
import { SkipForm } from './skip-form.tsx'
import { type ComputedFindings, useDiagnosis } from './use-diagnosis.ts'

const words = { checks, wheels }

type FindingsStepProps = {
  state: OrderState
  history: HistoryEvidence | null
  /** Opens the pad of a task; the question is the rules' own. */
  onOpen: (task: ArrivalTask, question: string) => void
  onDone: () => void
}

/** The computed findings, for a technician to confirm, or to disagree with and say why. */
export function FindingsStep({ state, history, onOpen, onDone }: FindingsStepProps) {
  const computed = useDiagnosis(state, history)
  const { recordAll, busy, problem } = useRecord(state.orderId)
  const [differs, setDiffers] = useState(false)
  const [skipping, setSkipping] = useState<NextCheck | null>(null)
  if (computed === null)
    return (
      <StepScreen title="Findings">
        <StatusLine>Computing …</StatusLine>
      </StepScreen>
    )
  const { diagnosis, evidence } = computed
  const { here, atDesk } = nextToCheck(diagnosis, state.arrival.tires)
  const write = writerOf(state, computed)
  // A reading that its neighbors contradict is taken again; there is no reason to leave it as it is.
  const asked = here?.check ?? atDesk
  const mayBeSkipped = asked !== null && !hasFact(evidence, asked.field)

  if (skipping !== null)
    return (
      <SkipForm
        orderId={state.orderId}
        fields={sameQuestion(diagnosis.unchecked, skipping)}
        asks={askFor(words, skipping)}
        onBack={() => setSkipping(null)}
        onDone={() => setSkipping(null)}
      />
    )
  if (differs)
    return (
      <OwnFindingForm
        orderId={state.orderId}
        onBack={() => setDiffers(false)}
        busy={busy}
        problem={problem}
        onRecord={async (ownFinding, reason, form) => {
          const taken = await recordAll(
            write({ agrees: false, ownFinding, reason: reason.digest }),
            'findings',
            { form, sides: [reason] },
          )
          if (taken) onDone()
          return taken
        }}
      />
    )
  return (
    <StepScreen
      title={diagnosis.primary === null ? 'No cause found so far' : 'What the readings say'}
      problem={problem}
      pad={
        <div className="findings-actions">
          {here === null ? (
            <p>
              {atDesk === null
                ? 'Nothing more is worth checking: no open fact would change what is done.'
                : 'Nothing more is worth checking in the bay.'}
            </p>
          ) : (
            <Button look="wide" onClick={() => onOpen(here.task, askFor(words, here.check))}>
              Check next: {askFor(words, here.check)}
            </Button>
          )}
          <div className="findings-verdict">
            <Button
              look={here === null ? 'wide' : 'plain'}
              busy={busy}
              onClick={async () => {
                if (await recordAll(write({ agrees: true }), 'findings', { form: null })) onDone()
              }}
            >
              I agree: confirm the findings
            </Button>
            <Button onClick={() => setDiffers(true)}>I see it otherwise</Button>
            {asked !== null && mayBeSkipped ? (
              <Button onClick={() => setSkipping(asked)}>Skip this check</Button>
            ) : null}
          </div>
        </div>
      }
    >
      {atDesk === null ? null : <p>For the desk: {askFor(words, atDesk)}</p>}
      <BayFindings diagnosis={diagnosis} evidence={evidence} isOver={false} />
    </StepScreen>
  )
}

/** The open facts that are asked for by the same words as this check, itself among them. */
const sameQuestion = (unchecked: readonly string[], check: NextCheck): string[] => {
  const asks = askFor(words, check)
  const alike = unchecked.filter((field) => askFor(words, { ...check, field }) === asks)
  return alike.includes(check.field) ? alike : [check.field, ...alike]
}

type Verdict = { agrees: true } | { agrees: false; ownFinding: string; reason: string }

/** Writes the findings, unless the ledger already holds exactly these, then the technician's verdict. */
const writerOf = (state: OrderState, { evidence, diagnosis }: ComputedFindings) => {
  const standing = state.diagnosis && !state.diagnosis.outdated ? state.diagnosis.written.entryId : null
  return (verdict: Verdict) => {
    if (standing !== null)
      return [draftEntry(state.orderId, 'diagnosis.confirmed', { diagnosisId: standing, verdict })]
    const issued = draftEntry(state.orderId, 'diagnosis.issued', {
      evidence,
      diagnosis,
      evidenceDigest: digestOf(evidence),
    })
    return [
      issued,
      draftEntry(state.orderId, 'diagnosis.confirmed', { diagnosisId: issued.id, verdict }, [issued.id]),
    ]
  }
}
