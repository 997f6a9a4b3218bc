import { heldReason } from '@bayledger/ledger/questions/gates'
import { openHolds } from '@bayledger/ledger/questions/open-holds'
import { gates } from '@bayledger/wording/en/gates'
import { gateWords } from '@bayledger/wording/gates'
import { useState } from 'react'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { useStaffNames } from '../../../features/people/queries.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { useTimes } from '../shop-clock.ts'
import type { OrderPart } from './order-part.ts'

/**
 * Entries whose device had the wrong time, drives whose minutes the clock contradicts, and work that was recorded without
 * hearing what others had written: somebody finds out how it was and writes it down.
 */
export function ClockQuestions({ order }: OrderPart) {
  return openHolds(order.state).map((hold) => (
    <ClockQuestion
      key={hold.written.entryId}
      order={order}
      entryId={hold.written.entryId}
      words={gateWords(gates, heldReason(hold))}
      asks={asksOf(hold.code)}
    />
  ))
}

/** What was settled, by whom and with what words: it stays in sight. */
export function SettledClock({ order }: OrderPart) {
  const { at } = useTimes()
  const nameOf = useStaffNames()
  return order.state.settledHolds.map(({ hold, words, written }) => (
    <p key={written.entryId} className="quiet">
      {gateWords(gates, heldReason(hold))} Settled {at(written.writtenAt)} by{' '}
      {written.by.kind === 'staff' ? nameOf(written.by.staffId) : 'the shop'}: “{order.personalText(words)}”
    </p>
  ))
}

type Asks = { readonly question: string; readonly settle: string }

const aboutTheTime: Asks = {
  question: 'When was it really done, and how do you know?',
  settle: 'Settle the time',
}
const aboutTheDrive: Asks = {
  question: 'How long was it driven, and how do you know?',
  settle: 'Settle: the minutes count as typed',
}

const aboutTheRecord: Asks = {
  question: 'How is it, and how do you know?',
  settle: 'Settle: the entry stays',
}

const asksOf = (code: string): Asks =>
  code === 'drive-minutes-doubtful' ? aboutTheDrive : code === 'heard-late' ? aboutTheRecord : aboutTheTime

type ClockQuestionProps = OrderPart & { entryId: string; words: string; asks: Asks }

function ClockQuestion({ order, entryId, words, asks }: ClockQuestionProps) {
  const [answer, setAnswer] = useState('')
  const write = useWriteEntries(order.orderId)
  const settle = () => {
    const said = personal(answer.trim())
    write.mutate({
      entries: [draftEntry(order.orderId, 'hold.settled', { entryId, words: said.digest })],
      sides: [said],
    })
  }
  return (
    <div className="stack">
      <p>{words}</p>
      <TextField label={asks.question} value={answer} onChange={setAnswer} />
      {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
      <Button
        busy={write.isPending}
        whyNot={answer.trim() === '' ? 'Write down what you found out.' : undefined}
        onClick={settle}
      >
        {asks.settle}
      </Button>
    </div>
  )
}
