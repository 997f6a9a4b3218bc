import { canonicalText } from '@bayledger/ledger/digests'
import { answerTo, unansweredBundles } from '@bayledger/ledger/questions/answers'
import type { PayloadOf } from '@bayledger/ledger/registry'
import type { IssuedEstimate } from '@bayledger/ledger/state'
import type { Answer } from '@bayledger/reckoning/estimate'
import { english } from '@bayledger/wording/en/english'
import { type ShownBundle, shownEstimate } from '@bayledger/wording/shown-estimate'
import { useState } from 'react'
import { draftEntry, personal, sealSide } from '../../../features/ledger/draft-entry.ts'
import { orderMoney } from '../../../features/ledger/order-money.ts'
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
  const { scope } = issued
  const shown = shownEstimate(english, issued, orderMoney(order))
  const waiting = unansweredBundles(order.state)
  const askedKeys = scope.bundles
    .filter((bundle) => waiting.includes(bundle) || answerTo(order.state, bundle)?.answer === 'deferred')
    .map(({ bundleKey }) => bundleKey)
  const open = shown?.bundles.filter(({ bundleKey }) => askedKeys.includes(bundleKey)) ?? []
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
    shown === null
      ? 'The prices of this estimate are not shown here.'
      : open.find(({ bundleKey }) => given[bundleKey] === undefined) !== undefined
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
    if (relation === null || shown === null) return
    const read = sealSide(channel === 'telephone' ? script : canonicalText(shown))
    const who = personal(name.trim())
    const { consent, sides } = consentOf()
    write.mutate(
      {
        entries: [
          draftEntry(order.orderId, 'estimate.shown', { revision: scope.revision, channel, linkId: null }),
          draftEntry(order.orderId, 'estimate.decided', {
            revision: scope.revision,
            digest: issued.digest,
            answers: open.map((bundle) => answerFor(bundle, given[bundle.bundleKey] ?? 'declined')),
            by: { relation, name: who.digest },
            consent,
            shown: read.digest,
            language: 'en',
            agreesToElectronicRecord: wishes.includes('electronic'),
            wantsRemovedParts: wishes.includes('parts'),
          }),
        ],
        sides: [who, read, ...sides],
      },
      { onSuccess: onClose },
    )
  }

  const consentOf = () => {
    if (channel === 'telephone') {
      const [called, answered] = [sealSide(number.trim()), personal(said.trim())]
      return {
        consent: {
          channel,
          number: called.digest,
          calledAt: new Date().toISOString(),
          answerWords: answered.digest,
        },
        sides: [called, answered],
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

type QuestionProps = { bundle: ShownBundle; answer: Answer | null; onAnswer: (answer: Answer) => void }

function BundleQuestion({ bundle, answer, onAnswer }: QuestionProps) {
  return (
    <div>
      <ChoiceGroup
        label={`${bundle.title}, ${money(bundle.totalCents)}`}
        options={answers}
        value={answer}
        onChange={onAnswer}
      />
      {answer !== null && answer !== 'authorized'
        ? bundle.cautions.map(({ number, words }) => (
            <p key={number}>
              <strong>Say this:</strong> {words}
            </p>
          ))
        : null}
    </div>
  )
}

const answerFor = ({ bundleKey, cautions }: ShownBundle, answer: Answer): Decided['answers'][number] => ({
  bundleKey,
  answer,
  deferredUntil: null,
  cautionsShown: answer === 'authorized' ? [] : cautions.map(({ number, version }) => ({ number, version })),
})

const scriptFor = (
  vehicle: string,
  bundles: readonly ShownBundle[],
  given: Readonly<Record<string, Answer>>,
): string => {
  const lines = bundles.map(({ title, totalCents }) => `${title}, ${money(totalCents)} with tax`).join('; ')
  const yes = bundles.filter(({ bundleKey }) => given[bundleKey] === 'authorized')
  const total = yes.reduce((sum, { totalCents }) => sum + totalCents, 0)
  return `For your ${vehicle} I read: ${lines}. You say yes to ${yes.length === 0 ? 'none of it' : yes.map(({ title }) => title).join(' and ')}: ${money(total)} in all. Is that right?`
}
