import { untoldStops } from '@bayledger/ledger/questions/dangers'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { findingSentences } from '@bayledger/wording/en/finding-sentences'
import { findingTitles } from '@bayledger/wording/en/finding-titles'
import { wheels } from '@bayledger/wording/en/wheels'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import { useState } from 'react'
import { FindingsList } from '../../../features/findings/findings-list.tsx'
import { NotChecked } from '../../../features/findings/not-checked.tsx'
import { OwnFinding } from '../../../features/findings/own-finding.tsx'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { useStaffNames } from '../../../features/people/queries.ts'
import { FindingDrawing } from '../../../features/plan/finding-drawing.tsx'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { FoldingSection } from '../../../ui/folding-section.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import type { OrderPart } from './order-part.ts'
import { RecordRefusal, refusableStops } from './record-refusal.tsx'
import { settledFindings } from './settled.ts'
import { TodaysRules } from './todays-rules.tsx'

const words = { findingSentences, wheels }

/** The findings and who confirmed them; stops told to the customer and refusals; what today's rules would say. */
export function FindingsPart({ order }: OrderPart) {
  const issued = order.state.diagnosis
  const nameOf = useStaffNames()
  if (issued === null) return null
  const { diagnosis, evidence, confirmed, outdated } = issued
  const by = confirmed?.written.by
  const who = by?.kind === 'staff' ? nameOf(by.staffId) : 'the shop'
  const { reports, ended } = order.state
  const isOver = reports.length > 0 || ended !== null
  return (
    <FoldingSection
      title="Findings"
      id="findings"
      settled={settledFindings(order)}
      note={
        outdated
          ? 'outdated: the readings changed'
          : confirmed === null
            ? 'not confirmed yet'
            : confirmed.agrees
              ? `confirmed by ${who}`
              : `${who} finds otherwise`
      }
    >
      <div className="stack">
        {confirmed !== null && !confirmed.agrees ? (
          <OwnFinding
            who={who}
            ownFinding={confirmed.ownFinding}
            reason={order.personalText(confirmed.reason)}
          />
        ) : null}
        <FindingsList
          diagnosis={diagnosis}
          sentenceOf={(finding) => sentenceFor(words, finding)}
          drawing={(finding, word) => (
            <FindingDrawing finding={finding} diagnosis={diagnosis} evidence={evidence} word={word} />
          )}
        />
        <NotChecked unchecked={diagnosis.unchecked} notPossible={evidence.notPossible} isOver={isOver} />
        <TellStops order={order} />
        <Refusals order={order} />
        <TodaysRules orderId={order.orderId} ruleSet={diagnosis.ruleSet} />
      </div>
    </FoldingSection>
  )
}

/** Prompts the advisor to tell the customer about a danger now, and records that it was done. */
function TellStops({ order }: OrderPart) {
  const [answer, setAnswer] = useState('')
  const write = useWriteEntries(order.orderId)
  const { diagnosis } = order.state
  const untold = untoldStops(order.state)
  if (diagnosis === null || untold.length === 0 || order.state.reports.length > 0) return null
  const tell = (channel: 'in-person' | 'telephone') => {
    const words = personal(answer.trim())
    write.mutate({
      entries: [
        draftEntry(order.orderId, 'stop.told', {
          diagnosisId: diagnosis.written.entryId,
          codes: untold.map(({ code }) => code),
          channel,
          answer: words.digest,
        }),
      ],
      sides: [words],
    })
  }
  const whyNot = answer.trim() === '' ? 'Write down what the customer answered.' : undefined
  return (
    <div className="stack">
      <p>
        <strong>Tell the customer now:</strong>{' '}
        {untold.map((finding) => sentenceFor(words, finding)).join(' ')}
      </p>
      <TextField label="The customer’s answer" value={answer} onChange={setAnswer} />
      {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
      <div className="row">
        <Button look="main" whyNot={whyNot} busy={write.isPending} onClick={() => tell('telephone')}>
          Told by telephone
        </Button>
        <Button whyNot={whyNot} busy={write.isPending} onClick={() => tell('in-person')}>
          Told in person
        </Button>
      </div>
    </div>
  )
}

/** Records that the customer refuses what they were told, so that the vehicle may leave as their own choice. */
function Refusals({ order }: OrderPart) {
  const [refusing, setRefusing] = useState<Finding | null>(null)
  const refusable = refusableStops({ order })
  if (order.state.reports.length > 0) return null
  return (
    <>
      {refusable.map((stop) => (
        <Button key={stop.code} onClick={() => setRefusing(stop)}>
          The customer refuses: {findingTitles[stop.code]}
        </Button>
      ))}
      {refusing === null ? null : (
        <RecordRefusal order={order} stop={refusing} onClose={() => setRefusing(null)} />
      )}
    </>
  )
}
