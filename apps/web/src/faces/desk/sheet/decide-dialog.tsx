import { answerTo, unansweredBundles } from '@bayledger/ledger/questions/answers'
import type { PayloadOf } from '@bayledger/ledger/registry'
import type { IssuedEstimate } from '@bayledger/ledger/state'
import { cautionShown, customerCaution } from '@bayledger/reckoning/cautions/customer-cautions'
import type { Answer, Bundle } from '@bayledger/reckoning/estimate'
import { useState } from 'react'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { money } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { CheckGroup, ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { type Signature, SignaturePad } from '../../../ui/signature-pad.tsx'
import { signatureText } from '../../../ui/signature-text.ts'
import { TextField } from '../../../ui/text-field.tsx'
import type { OrderPart } from './order-part.ts'

type Decided = PayloadOf<'estimate.decided'>
type DecideProps = OrderPart & {
  issued: IssuedEstimate
  channel: 'in-person' | 'telephone'
  onClose: () => void
}

const answers = [
  { value: 'authorized', label: 'Yes' },
  { value: 'declined', label: 'No' },
  { value: 'deferred', label: 'Later' },
] as const

/** Consent at the desk with a signature, or by telephone with a script that is filled in. */
export function DecideDialog({ order, issued, channel, onClose }: DecideProps) {
  const { estimate } = issued
  const waiting = unansweredBundles(order.state)
  const open = estimate.bundles.filter(
    (bundle) => waiting.includes(bundle) || answerTo(order.state, bundle)?.answer === 'deferred',
  )
  const [given, setGiven] = useState<Readonly<Record<string, Answer>>>({})
  const [name, setName] = useState(order.customer.name)
  const [relation, setRelation] = useState<Decided['by']['relation'] | null>(null)
  const [signature, setSignature] = useState<Signature | null>(null)
  const [number, setNumber] = useState(order.customer.phone ?? '')
  const [said, setSaid] = useState('')
  const [wishes, setWishes] = useState<('electronic' | 'parts')[]>([])
  const write = useWriteEntries(order.orderId)
  const script = scriptFor(order.vehicle.description, open, given)
  const whyNot =
    open.find(({ bundleKey }) => given[bundleKey] === undefined) !== undefined
      ? 'Each line needs a Yes, a No or a Later.'
      : relation === null
        ? 'Who decides?'
        : name.trim() === ''
          ? 'Write the name of who decides.'
          : channel === 'in-person' && signature === null
            ? 'Let the customer sign.'
            : channel === 'telephone' && (number.trim() === '' || said.trim() === '')
              ? 'Write down the number called and the answer in words.'
              : undefined

  const decide = () => {
    if (relation === null) return
    const who = personal(name.trim())
    const { consent, sides } = consentOf()
    write.mutate(
      {
        entries: [
          draftEntry(order.orderId, 'estimate.shown', { revision: estimate.revision, channel, linkId: null }),
          draftEntry(order.orderId, 'estimate.decided', {
            revision: estimate.revision,
            digest: issued.digest,
            answers: open.map((bundle) => answerFor(bundle, given[bundle.bundleKey] ?? 'declined')),
            by: { relation, name: who.digest },
            consent,
            language: 'en',
            agreesToElectronicRecord: wishes.includes('electronic'),
            wantsRemovedParts: wishes.includes('parts'),
          }),
        ],
        sides: [who, ...sides],
      },
      { onSuccess: onClose },
    )
  }

  const consentOf = () => {
    if (channel === 'telephone') {
      const [called, read, answered] = [personal(number.trim()), personal(script), personal(said.trim())]
      return {
        consent: {
          channel,
          number: called.digest,
          calledAt: new Date().toISOString(),
          readOut: read.digest,
          answerWords: answered.digest,
        },
        sides: [called, read, answered],
      } as const
    }
    const text = personal(signature === null ? '' : signatureText(signature))
    return {
      consent: { channel, signature: { form: signature?.form ?? 'typed', digest: text.digest } },
      sides: [text],
    } as const
  }

  return (
    <Dialog title={channel === 'telephone' ? 'Consent by telephone' : 'Consent here'} onClose={onClose}>
      <div className="stack">
        {open.map((bundle) => (
          <BundleQuestion
            key={bundle.bundleKey}
            bundle={bundle}
            answer={given[bundle.bundleKey] ?? null}
            onAnswer={(answer) => setGiven({ ...given, [bundle.bundleKey]: answer })}
          />
        ))}
        <ChoiceGroup
          label="Who decides?"
          options={[
            { value: 'owner', label: 'The owner' },
            { value: 'named-person', label: 'A person the owner named' },
            { value: 'fleet-contact', label: 'A fleet contact' },
          ]}
          value={relation}
          onChange={setRelation}
        />
        <TextField label="Name" value={name} onChange={setName} />
        {channel === 'telephone' ? (
          <>
            <p>
              <strong>Read out:</strong> {script}
            </p>
            <TextField label="Number called" type="tel" value={number} onChange={setNumber} />
            <TextField label="The answer, in their words" value={said} onChange={setSaid} />
          </>
        ) : (
          <SignaturePad label="The customer’s signature" onChange={setSignature} />
        )}
        <CheckGroup
          label="Also"
          options={[
            { value: 'electronic', label: 'Agrees to an electronic record' },
            { value: 'parts', label: 'Wants the removed parts' },
          ]}
          values={wishes}
          onChange={setWishes}
        />
        {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
        <Button look="wide" whyNot={whyNot} busy={write.isPending} onClick={decide}>
          Record the decision
        </Button>
      </div>
    </Dialog>
  )
}

type QuestionProps = { bundle: Bundle; answer: Answer | null; onAnswer: (answer: Answer) => void }

function BundleQuestion({ bundle, answer, onAnswer }: QuestionProps) {
  const caution = bundle.caution === null ? null : customerCaution(bundle.caution)
  return (
    <div>
      <ChoiceGroup
        label={`${bundle.title}, ${money(bundle.totals.totalCents)}`}
        options={answers}
        value={answer}
        onChange={onAnswer}
      />
      {caution !== null && answer !== null && answer !== 'authorized' ? (
        <p>
          <strong>Say this:</strong> {caution.words}
        </p>
      ) : null}
    </div>
  )
}

const answerFor = (bundle: Bundle, answer: Answer): Decided['answers'][number] => {
  const caution = bundle.caution === null ? null : customerCaution(bundle.caution)
  return {
    bundleKey: bundle.bundleKey,
    answer,
    deferredUntil: null,
    cautionShown: answer === 'authorized' || caution === null ? null : cautionShown(caution),
  }
}

const scriptFor = (
  vehicle: string,
  bundles: readonly Bundle[],
  given: Readonly<Record<string, Answer>>,
): string => {
  const lines = bundles
    .map(({ title, totals }) => `${title}, ${money(totals.totalCents)} with tax`)
    .join('; ')
  const yes = bundles.filter(({ bundleKey }) => given[bundleKey] === 'authorized')
  const total = yes.reduce((sum, { totals }) => sum + totals.totalCents, 0)
  return `For your ${vehicle} I read: ${lines}. You say yes to ${yes.length === 0 ? 'none of it' : yes.map(({ title }) => title).join(' and ')}: ${money(total)} in all. Is that right?`
}
