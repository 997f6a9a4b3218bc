import { answerTo, newestBundles } from '@bayledger/ledger/questions/answers'
import { refusableFinding } from '@bayledger/ledger/questions/remedies'
import { openTroubles } from '@bayledger/ledger/questions/troubles'
import type { PayloadOf } from '@bayledger/ledger/registry'
import type { OrderState } from '@bayledger/ledger/state'
import { type CustomerCautionNumber, customerCaution } from '@bayledger/reckoning/cautions/customer-cautions'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { cautionWords } from '@bayledger/wording/customer-cautions'
import { customerCautions } from '@bayledger/wording/en/customer-cautions'
import { findingSentences } from '@bayledger/wording/en/finding-sentences'
import { findingTitles } from '@bayledger/wording/en/finding-titles'
import { wheels } from '@bayledger/wording/en/wheels'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import { useState } from 'react'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import {
  namedBy,
  SecondPersonFields,
  secondPersonFault,
  useSecondPersonTyped,
} from '../../../features/people/second-person-fields.tsx'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { type Signature, SignaturePad } from '../../../ui/signature-pad.tsx'
import { signatureText } from '../../../ui/signature-text.ts'
import type { OrderPart } from './order-part.ts'

/** The caution that is read aloud for each danger; the last one serves where none is its own. */
const cautionOf: Readonly<Record<string, CustomerCautionNumber>> = {
  'run-low-damage-possible': 'CT-14',
  'sealant-inside': 'CT-08',
  'tire-unsafe': 'CT-04',
  'wheel-not-secure': 'CT-13',
  'stem-leaking': 'CT-18',
  'puncture-found': 'CT-16',
}
const anyDanger = 'CT-04'

type Leaving = NonNullable<PayloadOf<'refusal.recorded'>['leaves']>

const waysToLeave: readonly { readonly value: Leaving; readonly label: string }[] = [
  { value: 'towed', label: 'It is towed' },
  { value: 'sound-spare', label: 'On a sound spare' },
  { value: 'as-it-is', label: 'As it is' },
]

/**
 * What may be refused on record: stops that the customer was told about, and a hole whose repair they declined, which
 * leaves the wheel parked.
 */
export const refusableStops = ({ order: { state } }: OrderPart): Finding[] =>
  (state.diagnosis?.diagnosis.findings ?? []).filter(
    ({ kind, code }) =>
      !state.refusals[code] && (kind === 'stop' ? state.stopsTold[code] : isDeclinedHole(state, code)),
  )

const isDeclinedHole = (state: OrderState, code: string): boolean =>
  openTroubles(state).some(
    ({ what, waitsFor, wheel }) =>
      what === 'hole' &&
      waitsFor === 'answer' &&
      refusableFinding(what) === code &&
      newestBundles(state).some(
        (bundle) =>
          bundle.works.some((work) => work.kind === 'repair-puncture' && work.wheel === wheel) &&
          (answerTo(state, bundle)?.answer ?? 'authorized') !== 'authorized',
      ),
  )

/** A customer may refuse what is dangerous to leave: read aloud, then signed, or witnessed where they will not sign. */
export function RecordRefusal({ order, stop, onClose }: OrderPart & { stop: Finding; onClose: () => void }) {
  const [signature, setSignature] = useState<Signature | null>(null)
  const [leaves, setLeaves] = useState<Leaving | null>(null)
  const witness = useSecondPersonTyped()
  const write = useWriteEntries(order.orderId)
  const caution = customerCaution(cautionOf[stop.code] ?? anyDanger)
  const record = () => {
    const signed = signature === null ? null : personal(signatureText(signature))
    const named = namedBy(witness)
    const proof =
      signed !== null
        ? { kind: 'signed' as const, digest: signed.digest }
        : named && { kind: 'refused-to-sign' as const, witness: named }
    if (proof === null || leaves === null) return
    write.mutate(
      {
        entries: [
          draftEntry(order.orderId, 'refusal.recorded', {
            codes: [stop.code],
            cautionShown: caution,
            proof,
            leaves,
          }),
        ],
        ...(signed === null ? { pin: witness.pin } : { sides: [signed] }),
      },
      { onSuccess: onClose },
    )
  }
  return (
    <Dialog title={`The customer refuses: ${findingTitles[stop.code]}`} onClose={onClose}>
      <div className="stack">
        <p>
          <strong>Read aloud:</strong> {sentenceFor({ findingSentences, wheels }, stop)}{' '}
          {cautionWords(customerCautions, caution)}
        </p>
        <ChoiceGroup
          label="How does the vehicle leave?"
          options={waysToLeave}
          value={leaves}
          onChange={setLeaves}
        />
        {leaves === 'sound-spare' ? (
          <p>
            <strong>Read aloud:</strong> {cautionWords(customerCautions, customerCaution('CT-15'))}
          </p>
        ) : null}
        <SignaturePad label="The customer’s signature" onChange={setSignature} />
        {signature === null ? (
          <SecondPersonFields
            kind="refusal.recorded"
            label="Will not sign: who witnesses it?"
            unchosen="Nobody yet"
            typed={witness}
          />
        ) : null}
        {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
        <Button
          look="main"
          busy={write.isPending}
          whyNot={
            leaves === null
              ? 'Say how the vehicle leaves.'
              : signature !== null
                ? undefined
                : witness.staffId === null
                  ? 'Let the customer sign, or name a witness.'
                  : secondPersonFault(witness)
          }
          onClick={record}
        >
          Record the refusal
        </Button>
      </div>
    </Dialog>
  )
}
