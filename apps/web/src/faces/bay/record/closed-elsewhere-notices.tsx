import { wheelNames } from '@bayledger/wording/en/wheels'
import { useQuery } from '@tanstack/react-query'
import type { ArrivalTask } from '../../../features/arrival/arrival-tasks.ts'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { useStaffNames } from '../../../features/people/queries.ts'
import type { ReadOrder } from '../../../ledger/order.ts'
import { clockTime } from '../../../lib/format.ts'
import { Button } from '../../../ui/button.tsx'
import { keepDraft, useFilledForms } from '../form/draft-store.ts'
import { deviceQuery } from '../session/device-query.ts'
import { useBayClock } from '../session/signed-in.ts'
import { undoWords } from '../work/step-words.ts'
import { useOutbox } from './bay-outbox.ts'
import { type ClosedElsewhere, closedElsewhere, noteBegun } from './closed-elsewhere.ts'
import { useRecord } from './use-record.ts'
import './refused-notices.css'

type ClosedElsewhereNoticesProps = {
  order: ReadOrder
  /** Opens the form under a key; `null` where no screen shows it any more. */
  onAgain: (formKey: string) => (() => void) | null
}

/** What somebody recorded on another tablet while it was half filled in here: by whom, and what was typed. */
export function ClosedElsewhereNotices({ order, onAgain }: ClosedElsewhereNoticesProps) {
  const { state, orderId, head } = order
  const filled = useFilledForms()
  const refused = useOutbox((content) => content.refused)
  const device = useQuery({ ...deviceQuery, enabled: false }).data
  // A form that a refusal has filled in again has a notice of its own.
  const told = new Set(refused.map(({ parcel }) => parcel.form?.key))
  const forms = new Map([...filled].filter(([key]) => !told.has(key)))
  const begunAt = noteBegun(orderId, head.seq, forms)
  return closedElsewhere(state, device?.deviceId ?? null, { forms, begunAt }).map((one) =>
    'step' in one.closed ? (
      <StepNotice key={one.formKey} orderId={orderId} one={one} step={undoWords(one.closed.step)} />
    ) : (
      <TaskNotice key={one.formKey} one={one} task={one.closed.task} onOpen={onAgain(one.formKey)} />
    ),
  )
}

/** Nothing more can be recorded at a step that is closed: what was typed stays as a note, or goes. */
function StepNotice({ orderId, one, step }: { orderId: string; one: ClosedElsewhere; step: string }) {
  const { recordAll, busy } = useRecord(orderId)
  const content = useFilledForms().get(one.formKey)
  const note = async () => {
    const words = personal(`${step}, typed and not recorded: ${one.typed}`)
    if (
      await recordAll([draftEntry(orderId, 'note.added', { words: words.digest })], 'note', {
        form: { key: one.formKey, content },
        sides: [words],
      })
    )
      discard(one)
  }
  return (
    <Notice
      one={one}
      what={step}
      advice="To record yours instead, withdraw theirs in History: the step opens again with what you typed."
    >
      <Button busy={busy} onClick={() => void note()}>
        Keep mine as a note
      </Button>
    </Notice>
  )
}

/** A task may be recorded by both. */
function TaskNotice({
  one,
  task,
  onOpen,
}: {
  one: ClosedElsewhere
  task: ArrivalTask
  onOpen: (() => void) | null
}) {
  return (
    <Notice
      one={one}
      what={taskWords(task)}
      advice="You may record yours too: both are kept, and where they differ somebody withdraws one."
    >
      {onOpen === null ? null : <Button onClick={onOpen}>Go on with mine</Button>}
    </Notice>
  )
}

function Notice({
  one,
  what,
  advice,
  children,
}: {
  one: ClosedElsewhere
  what: string
  advice: string
  children: React.ReactNode
}) {
  const nameOf = useStaffNames()
  const clock = useBayClock()
  const who = one.by.kind === 'staff' ? nameOf(one.by.staffId) : 'The shop'
  return (
    <div className="refused-notice" role="alert">
      <p>
        <strong>
          {who} recorded {what} on another tablet at {clockTime(one.writtenAt, clock)}.
        </strong>{' '}
        You had typed: {one.typed}. {advice}
      </p>
      {children}
      <Button onClick={() => discard(one)}>Discard mine</Button>
    </div>
  )
}

const discard = ({ formKey }: ClosedElsewhere): void => keepDraft(formKey, undefined)

const taskWords = (task: ArrivalTask): string => {
  switch (task.what) {
    case 'gauge':
      return `the ${wheelNames[task.wheel]} pressure`
    case 'sensor':
    case 'tire':
      return `the ${wheelNames[task.wheel]} ${task.what}`
    case 'surroundings':
      return 'the temperatures'
    case 'warning-light':
      return 'the warning light'
    default:
      return 'what the vehicle stored'
  }
}
