import { doerOf } from '@bayledger/ledger/fold/foldable'
import { definitionOf } from '@bayledger/ledger/registry'
import { useState } from 'react'
import { entryWords } from '../../../features/ledger/entry-words.ts'
import { strikeWords } from '../../../features/ledger/strike-reasons.ts'
import { useStaffNames } from '../../../features/people/queries.ts'
import type { ReadOrder } from '../../../ledger/order.ts'
import { clockTime } from '../../../lib/format.ts'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { useBayClock } from '../session/signed-in.ts'
import { WithdrawForm } from './withdraw-form.tsx'
import './history-screen.css'

/** The order's entries, newest first; an entry may be withdrawn with a reason where its kind allows, and stays shown. */
export function HistoryScreen({ order, onBack }: { order: ReadOrder; onBack: () => void }) {
  const nameOf = useStaffNames()
  const clock = useBayClock()
  const [withdrawing, setWithdrawing] = useState<string | null>(null)
  const struck = new Map(order.state.marks.map((mark) => [mark.entryId, mark.struck]))
  const entry = order.entries.find(({ id }) => id === withdrawing)
  if (entry)
    return (
      <WithdrawForm
        orderId={order.orderId}
        entry={entry}
        onBack={() => setWithdrawing(null)}
        onDone={() => setWithdrawing(null)}
      />
    )
  return (
    <StepScreen title="History" beside={<Button onClick={onBack}>Back to the step</Button>}>
      <ol className="history">
        {[...order.entries].reverse().map((line) => {
          const strike = struck.get(line.id)
          const doer = doerOf(line)
          const author = doer.kind === 'staff' ? nameOf(doer.staffId) : doer.kind
          const mayWithdraw = !strike && definitionOf(line.kind).strikable !== 'no'
          return (
            <li key={line.id} className="history-line">
              <span className="history-number">{line.seq}</span>
              <span>
                {strike ? <s>{entryWords(line)}</s> : entryWords(line)}
                <span className="quiet">
                  {' '}
                  · {clockTime(line.writtenAt, clock)} · {author}
                </span>
                {strike ? <span> · withdrawn: {strikeWords(strike.reason)}</span> : null}
              </span>
              {mayWithdraw ? (
                <Button
                  aria-label={`Withdraw ${line.seq}: ${entryWords(line)}`}
                  onClick={() => setWithdrawing(line.id)}
                >
                  Withdraw
                </Button>
              ) : null}
            </li>
          )
        })}
      </ol>
    </StepScreen>
  )
}
