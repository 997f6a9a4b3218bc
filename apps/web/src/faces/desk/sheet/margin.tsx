import { definitionOf, type PayloadOf } from '@bayledger/ledger/registry'
import type { Mark } from '@bayledger/ledger/state'
import { steps } from '@bayledger/wording/en/steps'
import { stepDoes } from '@bayledger/wording/steps'
import { useState } from 'react'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { entryWords, kindWords } from '../../../features/ledger/entry-words.ts'
import { strikeReasons, strikeWords } from '../../../features/ledger/strike-reasons.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { useStaffNames } from '../../../features/people/queries.ts'
import {
  namedBy,
  SecondPersonFields,
  secondPersonFault,
  useSecondPersonTyped,
} from '../../../features/people/second-person-fields.tsx'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { clockTimesInOrder } from '../order-times.ts'
import { useShopClock } from '../shop-clock.ts'
import type { OrderPart } from './order-part.ts'
import { partOfKind } from './part-of-kind.ts'
import './margin.css'

type StrikeReason = PayloadOf<'entry.struck'>['reason']

/** Which step an entry closed or set aside, where the plan still has it: ": Lift the vehicle". */
const stepOf = (
  { state }: OrderPart['order'],
  { kind, payload }: OrderPart['order']['entries'][number],
): string => {
  if ((kind !== 'step.closed' && kind !== 'step.set_aside') || !('stepKey' in payload)) return ''
  const step = state.plan?.plan.steps.find(({ stepKey }) => stepKey === payload.stepKey)
  if (step === undefined) return ''
  return `: ${stepDoes(steps, step)}${step.wheel === null ? '' : `, ${step.wheel}`}`
}

/** The order's history, newest last; a withdrawn entry stays, struck through, with its reason. */
export function Margin({ order }: OrderPart) {
  const [striking, setStriking] = useState<Mark | null>(null)
  const nameOf = useStaffNames()
  const clock = useShopClock()
  const times = clockTimesInOrder(
    order.state.marks.map(({ writtenAt }) => writtenAt),
    new Date().toISOString(),
    clock,
  )
  const stands = order.state.reports.length > 0 || order.state.ended !== null
  const saidBy = new Map(
    order.entries.map((entry) => [entry.id, `${entryWords(entry)}${stepOf(order, entry)}`]),
  )
  return (
    <aside className="margin" aria-label="Ledger">
      <h2>History</h2>
      <ol>
        {order.state.marks.map((mark, place) => (
          <li key={mark.entryId} className={mark.struck ? 'mark mark-struck' : 'mark'}>
            <span className="mark-number">{mark.seq}</span>
            <span>
              <a className="mark-words" href={`#${partOfKind[mark.kind]}`}>
                {saidBy.get(mark.entryId) ?? kindWords(mark.kind)}
              </a>
              <span className="quiet">
                {' '}
                {times[place]}, {authorWords(mark, nameOf)}
              </span>
              {mark.struck ? (
                <span className="mark-reason">
                  withdrawn:{' '}
                  {mark.struck.words
                    ? order.personalText(mark.struck.words)
                    : strikeWords(mark.struck.reason)}
                </span>
              ) : stands || definitionOf(mark.kind).strikable === 'no' ? null : (
                <button
                  type="button"
                  className="mark-strike"
                  aria-label={`Withdraw entry ${mark.seq}, ${kindWords(mark.kind)}`}
                  onClick={() => setStriking(mark)}
                >
                  withdraw
                </button>
              )}
            </span>
          </li>
        ))}
      </ol>
      {striking === null ? null : (
        <StrikeDialog order={order} mark={striking} onClose={() => setStriking(null)} />
      )}
    </aside>
  )
}

const authorWords = (mark: Mark, nameOf: (staffId: string) => string): string =>
  mark.by.kind === 'staff'
    ? nameOf(mark.by.staffId)
    : mark.by.kind === 'customer'
      ? 'the customer’s link'
      : 'computed'

function StrikeDialog({ order, mark, onClose }: OrderPart & { mark: Mark; onClose: () => void }) {
  const [reason, setReason] = useState<StrikeReason | null>(null)
  const [words, setWords] = useState('')
  const write = useWriteEntries(order.orderId)
  const needsSecond = definitionOf(mark.kind).strikable === 'second-person'
  const second = useSecondPersonTyped()
  const whyNot =
    reason === null
      ? 'Choose the reason.'
      : reason === 'other' && words.trim() === ''
        ? 'Say the reason in words.'
        : needsSecond
          ? secondPersonFault(second)
          : undefined
  const strike = () => {
    if (reason === null) return
    const said = words.trim() === '' ? null : personal(words.trim())
    write.mutate(
      {
        entries: [
          draftEntry(order.orderId, 'entry.struck', {
            entryId: mark.entryId,
            reason,
            words: said?.digest ?? null,
            secondPerson: needsSecond ? namedBy(second) : null,
          }),
        ],
        sides: said === null ? [] : [said],
        ...(needsSecond ? { pin: second.pin } : {}),
      },
      { onSuccess: onClose },
    )
  }
  return (
    <Dialog title={`Withdraw entry ${mark.seq}: ${kindWords(mark.kind)}`} onClose={onClose}>
      <div className="stack">
        <p>The line stays in the ledger, struck, with your name and the reason.</p>
        <SelectField label="Reason" options={strikeReasons} value={reason} onChange={setReason} />
        <TextField label="In words" value={words} onChange={setWords} />
        {needsSecond ? (
          <SecondPersonFields kind="entry.struck" label="Second person who agrees" typed={second} />
        ) : null}
        {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
        <Button look="main" whyNot={whyNot} busy={write.isPending} onClick={strike}>
          Withdraw it
        </Button>
      </div>
    </Dialog>
  )
}
