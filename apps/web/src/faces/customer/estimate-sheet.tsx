import { type CustomerOrder, decideEstimate } from '@bayledger/contract/customer-face'
import { cautionsOwed } from '@bayledger/ledger/questions/cautions-owed'
import { useState } from 'react'
import { v7 } from 'uuid'
import { call } from '../../lib/api-client.ts'
import { clockTimeOrDay, money } from '../../lib/format.ts'
import { Button } from '../../ui/button.tsx'
import { CheckGroup, ChoiceGroup } from '../../ui/choice-group.tsx'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { Section } from '../../ui/section.tsx'
import { type Signature, SignaturePad } from '../../ui/signature-pad.tsx'
import { signatureText } from '../../ui/signature-text.ts'
import { TextField } from '../../ui/text-field.tsx'
import { BundleQuestion } from './bundle-question.tsx'
import { customerProblem } from './customer-problem.ts'
import {
  type Again,
  type Answers,
  askedOf,
  dangerFirst,
  type Estimate,
  type Offer,
  openQuestions,
  sumsOf,
  wantedIn,
  withAnswer,
} from './estimate-answers.ts'
import { useWords } from './spoken.tsx'

const relationCodes = ['owner', 'named-person', 'fleet-contact'] as const

type EstimateSheetProps = { estimate: Estimate; order: CustomerOrder; onDecided: () => Promise<void> }

/** Each bundle with its price and its question, then the sum of what is wanted, then a signature under exactly that. */
export function EstimateSheet({ estimate, order, onDecided }: EstimateSheetProps) {
  const { customerEstimate: says, locale } = useWords()
  const clock = { timeZone: order.timeZone, locale }
  const [answers, setAnswers] = useState<Answers>({})
  const [again, setAgain] = useState<Again>(null)
  const asked = askedOf(estimate, again)
  const answered = estimate.bundles.filter(({ answer }) => answer !== null)
  const wanted = wantedIn(estimate, answers)
  const { lookCents, totalCents } = sumsOf(estimate, answers)
  const waiting = openQuestions(asked, answers)
  const answerAgain = (what: Again) => {
    setAnswers({})
    setAgain(what)
  }
  const decided = async () => {
    answerAgain(null)
    await onDecided()
  }
  return (
    <>
      {answered.length === 0 ? null : <YourAnswer answered={answered} again={again} onAgain={answerAgain} />}
      <Section title={says.title} note={says.version(estimate.revision)}>
        {estimate.readyAt === null || !asked.some(({ answer }) => answer === null) ? null : (
          <p>{says.ready(clockTimeOrDay(estimate.readyAt, estimate.issuedAt, clock))}</p>
        )}
        {order.drive.verdict === 'do-not-drive' ? (
          <p>
            <strong>{says.stillUnsafe}</strong>
          </p>
        ) : null}
        {dangerFirst(estimate.bundles).map((offer) => (
          <BundleQuestion
            key={offer.bundleKey}
            offer={offer}
            insteadOf={
              estimate.bundles.find(({ bundleKey }) => bundleKey === offer.alternativeTo)?.title ?? null
            }
            look={estimate.look}
            cautions={cautionsOwed(offer, estimate.bundles, wanted)}
            isAsked={asked.includes(offer)}
            mayDrive={order.drive.verdict !== 'do-not-drive'}
            answer={answers[offer.bundleKey] ?? null}
            onAnswer={(answer) => setAnswers(withAnswer(estimate, answers, offer.bundleKey, answer))}
          />
        ))}
        {lookCents === 0 ? null : (
          <p className="customer-total">
            <span>{says.look}</span> <span className="bundle-amount">{money(lookCents)}</span>
          </p>
        )}
        {asked.length > 0 && Object.keys(answers).length === 0 ? null : (
          <p className="customer-total">
            <span>{says.total}</span> <strong>{money(totalCents)}</strong>
          </p>
        )}
      </Section>
      {asked.length === 0 ? null : (
        <SignSheet
          estimate={estimate}
          answers={answers}
          wanted={wanted}
          waiting={waiting}
          onDecided={decided}
        />
      )}
    </>
  )
}

type YourAnswerProps = { answered: readonly Offer[]; again: Again; onAgain: (what: Again) => void }

/** That the answer arrived, and what it was; what was put off can be answered again, and a Yes taken back. */
function YourAnswer({ answered, again, onAgain }: YourAnswerProps) {
  const { customerEstimate: says } = useWords()
  return (
    <Section title={says.answered.title}>
      <p role="status">{says.answered.recorded}</p>
      <ul className="bundle-lines">
        {answered.map(({ bundleKey, title, answer }) => (
          <li key={bundleKey}>
            <span>{title}</span> <strong>{answer === null ? '' : says.answers[answer]}</strong>
          </li>
        ))}
      </ul>
      {answered.some(({ answer }) => answer === 'declined') ? <p>{says.answered.afterNo}</p> : null}
      {again === null && answered.some(({ answerable }) => answerable) ? (
        <Button onClick={() => onAgain('put-off')}>{says.answered.answerDeferred}</Button>
      ) : null}
      {again === null && answered.some(({ mayTakeBack }) => mayTakeBack) ? (
        <Button onClick={() => onAgain('take-back')}>{says.answered.takeBack}</Button>
      ) : null}
      {again === 'take-back' ? (
        <>
          <p>{says.answered.takingBack}</p>
          <Button onClick={() => onAgain(null)}>{says.answered.keep}</Button>
        </>
      ) : null}
    </Section>
  )
}

type SignSheetProps = {
  estimate: Estimate
  answers: Answers
  wanted: ReadonlySet<string>
  waiting: number
  onDecided: () => Promise<void>
}

function SignSheet({ estimate, answers, wanted, waiting, onDecided }: SignSheetProps) {
  const words = useWords()
  const { customerEstimate: says } = words
  const relations = relationCodes.map((value) => ({ value, label: says.sign.relations[value] }))
  // Made once: however often the button is pressed on a bad network, one answer is written.
  const [entryId] = useState(() => v7())
  const [name, setName] = useState('')
  const [relation, setRelation] = useState<(typeof relationCodes)[number] | null>(null)
  const [signature, setSignature] = useState<Signature | null>(null)
  const [agreements, setAgreements] = useState<('electronic' | 'parts')[]>([])
  const [sending, setSending] = useState(false)
  const [problem, setProblem] = useState<unknown>(null)
  const lacks = says.sign.missing
  const missing =
    waiting > 0
      ? lacks.answers(waiting)
      : relation === null
        ? lacks.relation
        : name.trim() === ''
          ? lacks.name
          : signature === null
            ? lacks.signature
            : agreements.includes('electronic')
              ? undefined
              : lacks.agreement

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
            .map((offer) => ({
              bundleKey: offer.bundleKey,
              answer: answers[offer.bundleKey] ?? 'declined',
              deferredUntil: null,
              cautionsShown:
                answers[offer.bundleKey] === 'authorized'
                  ? []
                  : cautionsOwed(offer, estimate.bundles, wanted).map(({ number, version }) => ({
                      number,
                      version,
                    })),
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
    <Section title={says.sign.title}>
      <div className="stack">
        <ChoiceGroup
          label={says.sign.youAre}
          options={relations}
          value={relation}
          onChange={setRelation}
          flow="column"
        />
        <TextField label={says.sign.name} autoComplete="name" value={name} onChange={setName} />
        <SignaturePad label={says.sign.signature} onChange={setSignature} />
        <CheckGroup
          label={says.sign.before}
          flow="column"
          options={[
            { value: 'electronic', ...says.sign.electronic },
            { value: 'parts', label: says.sign.parts },
          ]}
          values={agreements}
          onChange={setAgreements}
        />
        {problem === null ? null : <ProblemNotice problem={customerProblem(words, problem)} />}
        <Button look="wide" whyNot={missing} busy={sending} onClick={() => void send()}>
          {says.sign.send}
        </Button>
      </div>
    </Section>
  )
}
