import { cautionShown, customerCaution } from '@bayledger/reckoning/cautions/customer-cautions'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { findingSentences } from '@bayledger/wording/en/finding-sentences'
import { findingTitles } from '@bayledger/wording/en/finding-titles'
import { wheels } from '@bayledger/wording/en/wheels'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { sessionQuery, staffQuery } from '../../../features/people/queries.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import { type Signature, SignaturePad } from '../../../ui/signature-pad.tsx'
import { signatureText } from '../../../ui/signature-text.ts'
import type { OrderPart } from './order-part.ts'

/** The caution that is read aloud for each danger; the last one serves where none is its own. */
const cautionOf: Readonly<Record<string, string>> = {
  'run-low-damage-possible': 'CT-14',
  'sealant-inside': 'CT-08',
  'tire-unsafe': 'CT-04',
  'wheel-not-secure': 'CT-13',
  'stem-leaking': 'CT-17',
}
const anyDanger = 'CT-04'

/** The stops that were told and neither refused on record nor cured: what a customer may still refuse. */
export const refusableStops = ({ order }: OrderPart): Finding[] =>
  (order.state.diagnosis?.diagnosis.findings ?? []).filter(
    ({ kind, code }) => kind === 'stop' && order.state.stopsTold[code] && !order.state.refusals[code],
  )

/** A customer may refuse what is dangerous to leave: read aloud, then signed, or witnessed where they will not sign. */
export function RecordRefusal({ order, stop, onClose }: OrderPart & { stop: Finding; onClose: () => void }) {
  const [signature, setSignature] = useState<Signature | null>(null)
  const [witness, setWitness] = useState<string | null>(null)
  const staff = useQuery(staffQuery)
  const session = useQuery(sessionQuery)
  const write = useWriteEntries(order.orderId)
  const caution = customerCaution(cautionOf[stop.code] ?? anyDanger)
  const others = (staff.data?.staff ?? []).filter(({ staffId }) => staffId !== session.data?.staff.staffId)
  const record = () => {
    if (caution === null) return
    const signed = signature === null ? null : personal(signatureText(signature))
    write.mutate(
      {
        entries: [
          draftEntry(order.orderId, 'refusal.recorded', {
            codes: [stop.code],
            cautionShown: cautionShown(caution),
            proof:
              signed === null
                ? { kind: 'refused-to-sign', witnessId: witness ?? '' }
                : { kind: 'signed', digest: signed.digest },
          }),
        ],
        sides: signed === null ? [] : [signed],
      },
      { onSuccess: onClose },
    )
  }
  return (
    <Dialog title={`The customer refuses: ${findingTitles[stop.code]}`} onClose={onClose}>
      <div className="stack">
        <p>
          <strong>Read aloud:</strong> {sentenceFor({ findingSentences, wheels }, stop)} {caution?.words}
        </p>
        <SignaturePad label="The customer’s signature" onChange={setSignature} />
        <SelectField
          label="Will not sign: who witnesses it?"
          unchosen="Nobody yet"
          options={others.map(({ staffId, name }) => ({ value: staffId, label: name }))}
          value={witness}
          onChange={setWitness}
        />
        {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
        <Button
          look="main"
          busy={write.isPending}
          whyNot={
            signature === null && witness === null ? 'Let the customer sign, or name a witness.' : undefined
          }
          onClick={record}
        >
          Record the refusal
        </Button>
      </div>
    </Dialog>
  )
}
