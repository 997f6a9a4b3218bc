import { useState } from 'react'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { ComplaintFields, type ComplaintForm } from '../write-up/complaint-fields.tsx'
import { eventsAsEvidence } from '../write-up/events.ts'
import type { OrderPart } from './order-part.ts'

const blank: ComplaintForm = { words: '', light: null, events: {}, askedEach: false }

/** A complaint that was withdrawn is written again here; the withdrawn one stays in the history. */
export function WriteComplaint({ order }: OrderPart) {
  const [form, setForm] = useState(blank)
  const write = useWriteEntries(order.orderId)
  if (order.state.reports.length > 0 || order.state.ended !== null) return null
  const record = () => {
    const words = personal(form.words.trim())
    write.mutate({
      entries: [
        draftEntry(order.orderId, 'complaint.recorded', {
          words: words.digest,
          reportedLight: form.light === 'not-known' ? null : form.light,
          events: eventsAsEvidence(form.events, form.askedEach),
        }),
      ],
      sides: [words],
    })
  }
  return (
    <ComplaintFields form={form} set={(change) => setForm((before) => ({ ...before, ...change }))}>
      {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
      <Button
        look="main"
        busy={write.isPending}
        whyNot={
          form.words.trim() === ''
            ? 'Write down the complaint in the customer’s own words.'
            : form.light === null
              ? 'Ask what the light does; "does not know" is an answer.'
              : undefined
        }
        onClick={record}
      >
        Record the complaint
      </Button>
    </ComplaintFields>
  )
}
