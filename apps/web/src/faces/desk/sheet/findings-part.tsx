import { fieldTitle, uncheckedLines } from '@bayledger/reckoning/catalog/field-words'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { inReadingOrder, wheelNames } from '@bayledger/reckoning/wheels'
import { useState } from 'react'
import { type Severity, SeverityMark } from '../../../features/findings/severity-mark.tsx'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { useStaffNames } from '../../../features/people/queries.ts'
import { wordsOf } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import type { OrderPart } from './order-part.ts'
import { RecordRefusal, refusableStops } from './record-refusal.tsx'

const stopWords = {
  'do-not-drive': 'Do not drive',
  'do-not-open-the-tire': 'Do not open the tire',
  'repair-before-release': 'Repair before release',
} as const

/** Stops first, then the cause with its number, then the rest; each opens to what it rests on. */
export function FindingsPart({ order }: OrderPart) {
  const issued = order.state.diagnosis
  const nameOf = useStaffNames()
  if (issued === null) return null
  const { diagnosis, confirmed, outdated } = issued
  const confirmedBy = confirmed?.written.by
  return (
    <Section
      title="Findings"
      id="findings"
      note={
        outdated
          ? 'outdated: the readings changed'
          : confirmed === null
            ? 'not confirmed yet'
            : `confirmed by ${confirmedBy?.kind === 'staff' ? nameOf(confirmedBy.staffId) : 'the shop'}`
      }
    >
      <div className="stack">
        {diagnosis.findings.map((finding) => (
          <FindingLine key={finding.code} finding={finding} isPrimary={diagnosis.primary === finding.code} />
        ))}
        {confirmed !== null && !confirmed.agrees ? (
          <SeverityMark severity="for-information" word="The technician finds otherwise">
            <p>{confirmed.ownFinding}</p>
            <p>{order.wordsOf(confirmed.reason)}</p>
          </SeverityMark>
        ) : null}
        {diagnosis.contradictions.map((contradiction) => (
          <SeverityMark key={contradiction.code} severity="for-information" word="Contradiction">
            <p>{contradiction.says}</p>
            <p>{contradiction.do}</p>
          </SeverityMark>
        ))}
        {diagnosis.unchecked.length === 0 ? null : (
          <SeverityMark severity="not-checked">
            <details>
              <summary>{diagnosis.unchecked.length} things that could matter</summary>
              {uncheckedLines(diagnosis.unchecked).map((line) => (
                <p key={line}>{line}</p>
              ))}
            </details>
          </SeverityMark>
        )}
        <TellStops order={order} />
        <Refusals order={order} />
      </div>
    </Section>
  )
}

function FindingLine({ finding, isPrimary }: { finding: Finding; isPrimary: boolean }) {
  const wheels = inReadingOrder(finding.wheels).map((wheel) => wheelNames[wheel])
  return (
    <SeverityMark severity={severityOf(finding, isPrimary)} {...wordOf(finding, isPrimary)}>
      <p>
        <strong>{finding.code.replaceAll('-', ' ')}</strong>
        {wheels.length === 0 ? '' : `, ${wheels.join(', ')}`}{' '}
        <span className="quiet">{finding.confidence}</span>
      </p>
      <p>{finding.customer}</p>
      <p className="quiet">{finding.next}</p>
      {finding.because.length === 0 ? null : (
        <details>
          <summary>What it rests on</summary>
          <ul>
            {finding.because.map((reason) => (
              <li key={`${reason.field} ${reason.says}`}>
                {fieldTitle(reason.field)}: {reasonValue(reason)}; {reason.says}
              </li>
            ))}
          </ul>
        </details>
      )}
    </SeverityMark>
  )
}

/** "31.2 psi"; what was only seen or told reads "yes" or "no". */
const reasonValue = ({ value, unit }: Finding['because'][number]): string => {
  if (value === null) return 'not read'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  return unit === null ? String(value).replaceAll('-', ' ') : `${value} ${unit}`
}

const severityOf = (finding: Finding, isPrimary: boolean): Severity => {
  if (finding.kind === 'stop') return 'do-not-drive'
  if (isPrimary) return 'cause'
  return finding.kind === 'note' || finding.kind === 'ask' ? 'for-information' : 'also-found'
}

const wordOf = (finding: Finding, isPrimary: boolean): { word?: string } => {
  if (finding.stop) return { word: stopWords[finding.stop] }
  return finding.kind === 'ask' && !isPrimary ? { word: 'Ask first' } : {}
}

/** A danger is told at once, and that it was told stands in the ledger. */
function TellStops({ order }: OrderPart) {
  const [answer, setAnswer] = useState('')
  const write = useWriteEntries(order.orderId)
  const { diagnosis, stopsTold } = order.state
  const untold = (diagnosis?.diagnosis.findings ?? []).filter(
    ({ kind, code }) => kind === 'stop' && !stopsTold[code],
  )
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
      texts: [words],
    })
  }
  const whyNot = answer.trim() === '' ? 'Write down what the customer answered.' : undefined
  return (
    <div className="stack">
      <p>
        <strong>Tell the customer now:</strong> {untold.map(({ customer }) => customer).join(' ')}
      </p>
      <TextField label="The customer’s answer" value={answer} onChange={setAnswer} />
      {write.isError ? <ProblemNotice problem={wordsOf(write.error)} /> : null}
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

/** What was told and is refused: recorded, so that the keys may go out as the customer's own choice. */
function Refusals({ order }: OrderPart) {
  const [refusing, setRefusing] = useState<Finding | null>(null)
  const refusable = refusableStops({ order })
  if (order.state.reports.length > 0) return null
  return (
    <>
      {refusable.map((stop) => (
        <Button key={stop.code} onClick={() => setRefusing(stop)}>
          The customer refuses: {stop.code.replaceAll('-', ' ')}
        </Button>
      ))}
      {refusing === null ? null : (
        <RecordRefusal order={order} stop={refusing} onClose={() => setRefusing(null)} />
      )}
    </>
  )
}
