import { type CustomerOrder, decideEstimate } from '@bayledger/contract/customer-face'
import type { Answer } from '@bayledger/reckoning/estimate'
import { useState } from 'react'
import { v7 } from 'uuid'
import { call } from '../../lib/api-client.ts'
import { clockTimeOrDay, money } from '../../lib/format.ts'
import { problemText } from '../../lib/problem.ts'
import { Button } from '../../ui/button.tsx'
import { CheckGroup, ChoiceGroup } from '../../ui/choice-group.tsx'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { Section } from '../../ui/section.tsx'
import { type Signature, SignaturePad } from '../../ui/signature-pad.tsx'
import { signatureText } from '../../ui/signature-text.ts'
import { TextField } from '../../ui/text-field.tsx'
import { BundleQuestion } from './bundle-question.tsx'

type Estimate = NonNullable<CustomerOrder['estimate']>
type EstimateSheetProps = { estimate: Estimate; order: CustomerOrder; onDecided: () => Promise<void> }

const relations = [
  { value: 'owner', label: 'The owner of this vehicle' },
  { value: 'named-person', label: 'Somebody the owner named to decide' },
  { value: 'fleet-contact', label: 'A fleet’s contact' },
] as const

/** Each bundle with its price and its question, then the sum of what is wanted, then a signature under exactly that. */
export function EstimateSheet({ estimate, order, onDecided }: EstimateSheetProps) {
  const [answers, setAnswers] = useState<Readonly<Record<string, Answer>>>({})
  const open = estimate.bundles.filter(({ answerable }) => answerable)
  const choose = (bundleKey: string, answer: Answer) =>
    setAnswers(withAnswer(estimate, answers, bundleKey, answer))
  const wanted = estimate.bundles.filter(
    ({ bundleKey, answer }) => (answers[bundleKey] ?? answer) === 'authorized',
  )
  const total = wanted.reduce((sum, { totalCents }) => sum + totalCents, 0)
  const unanswered = open.filter(({ bundleKey }) => answers[bundleKey] === undefined)
  return (
    <>
      <Section title="What it costs" note={`Version ${estimate.revision}`}>
        {estimate.readyAt === null ? null : (
          <p>
            If you say yes now, it will be ready by{' '}
            {clockTimeOrDay(estimate.readyAt, estimate.issuedAt, order)}.
          </p>
        )}
        {estimate.bundles.map((offer) => (
          <BundleQuestion
            key={offer.bundleKey}
            offer={offer}
            answer={answers[offer.bundleKey] ?? null}
            onAnswer={(answer) => choose(offer.bundleKey, answer)}
          />
        ))}
        <p className="customer-total">
          <span>What you say yes to, with tax</span> <strong>{money(total)}</strong>
        </p>
      </Section>
      {open.length === 0 ? (
        <Section title="Your answer">
          <p role="status">
            Thank you. Your answer is recorded, with this version of the estimate and your signature.
          </p>
        </Section>
      ) : (
        <SignSheet estimate={estimate} answers={answers} waiting={unanswered.length} onDecided={onDecided} />
      )}
    </>
  )
}

/** A Yes to one of two alternatives is a No to the other: they cannot both be wanted. */
const withAnswer = (
  estimate: Estimate,
  answers: Readonly<Record<string, Answer>>,
  bundleKey: string,
  answer: Answer,
): Readonly<Record<string, Answer>> => {
  const others = estimate.bundles.filter(
    (other) =>
      other.bundleKey !== bundleKey &&
      (other.alternativeTo === bundleKey ||
        estimate.bundles.some(
          (bundle) => bundle.bundleKey === bundleKey && bundle.alternativeTo === other.bundleKey,
        )),
  )
  const declined =
    answer === 'authorized'
      ? Object.fromEntries(others.map((other) => [other.bundleKey, 'declined' as const]))
      : {}
  return { ...answers, ...declined, [bundleKey]: answer }
}

type SignSheetProps = {
  estimate: Estimate
  answers: Readonly<Record<string, Answer>>
  waiting: number
  onDecided: () => Promise<void>
}

function SignSheet({ estimate, answers, waiting, onDecided }: SignSheetProps) {
  // Made once: however often the button is pressed on a bad network, one answer is written.
  const [entryId] = useState(() => v7())
  const [name, setName] = useState('')
  const [relation, setRelation] = useState<(typeof relations)[number]['value'] | null>(null)
  const [signature, setSignature] = useState<Signature | null>(null)
  const [agreements, setAgreements] = useState<('electronic' | 'parts')[]>([])
  const [sending, setSending] = useState(false)
  const [problem, setProblem] = useState<unknown>(null)
  const missing =
    waiting > 0
      ? `${waiting === 1 ? 'One question above has' : `${waiting} questions above have`} no answer yet.`
      : relation === null
        ? 'Say who you are.'
        : name.trim() === ''
          ? 'Write your name.'
          : signature === null
            ? 'Sign in the field, or type your name instead.'
            : agreements.includes('electronic')
              ? undefined
              : 'Agree to an electronic record, or call the shop for paper.'

  const send = async () => {
    if (relation === null || signature === null) return
    setSending(true)
    setProblem(null)
    try {
      await call(decideEstimate, {
        body: {
          entryId,
          revision: estimate.revision,
          digest: estimate.digest,
          shown: estimate.shown,
          answers: estimate.bundles
            .filter(({ bundleKey }) => answers[bundleKey] !== undefined)
            .map(({ bundleKey, cautions }) => ({
              bundleKey,
              answer: answers[bundleKey] ?? 'declined',
              deferredUntil: null,
              cautionsShown:
                answers[bundleKey] === 'authorized'
                  ? []
                  : cautions.map(({ number, version }) => ({ number, version })),
            })),
          name: name.trim(),
          relation,
          signature: { form: signature.form, text: signatureText(signature) },
          agreesToElectronicRecord: true,
          wantsRemovedParts: agreements.includes('parts'),
        },
      })
      await onDecided()
    } catch (thrown) {
      setProblem(thrown)
    } finally {
      setSending(false)
    }
  }

  return (
    <Section title="Sign">
      <div className="stack">
        <ChoiceGroup
          label="You are"
          options={relations}
          value={relation}
          onChange={setRelation}
          flow="column"
        />
        <TextField label="Your name" autoComplete="name" value={name} onChange={setName} />
        <SignaturePad label="Your signature" onChange={setSignature} />
        <CheckGroup
          label="Before you send"
          flow="column"
          options={[
            {
              value: 'electronic',
              label: 'I agree to decide and to be given the record electronically.',
              detail: 'You may ask for paper and may withdraw this at any time by calling the shop.',
            },
            { value: 'parts', label: 'I want the removed parts back.' },
          ]}
          values={agreements}
          onChange={setAgreements}
        />
        {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
        <Button look="wide" whyNot={missing} busy={sending} onClick={() => void send()}>
          Send my answer
        </Button>
      </div>
    </Section>
  )
}
