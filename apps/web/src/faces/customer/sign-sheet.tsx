import { decideEstimate } from '@bayledger/contract/customer-face'
import { cautionsOwed } from '@bayledger/ledger/questions/cautions-owed'
import { isSameName } from '@bayledger/ledger/same-name'
import { useState } from 'react'
import { v7 } from 'uuid'
import { call } from '../../lib/api-client.ts'
import { Button } from '../../ui/button.tsx'
import { CheckGroup, ChoiceGroup } from '../../ui/choice-group.tsx'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { Section } from '../../ui/section.tsx'
import { type Signature, SignaturePad } from '../../ui/signature-pad.tsx'
import { signatureText } from '../../ui/signature-text.ts'
import { TextField } from '../../ui/text-field.tsx'
import { customerProblem, isOutOfDate } from './customer-problem.ts'
import type { Estimate } from './estimate-answers.ts'
import { type HalfDecision, withRelation } from './kept-decision.ts'
import { useWords } from './spoken.tsx'

const relationCodes = ['owner', 'named-person', 'fleet-contact'] as const

type SignSheetProps = {
  estimate: Estimate
  /** As on the card: whoever says that they are the owner need not type it. */
  customerName: string
  half: HalfDecision
  onHalf: (half: HalfDecision) => void
  wanted: ReadonlySet<string>
  waiting: number
  onDecided: () => Promise<void>
}

/** Who decides, a signature under exactly what was answered, and the button that sends it. */
export function SignSheet({
  estimate,
  customerName,
  half,
  onHalf,
  wanted,
  waiting,
  onDecided,
}: SignSheetProps) {
  const { answers, name, relation, agreements } = half
  const words = useWords()
  const { customerEstimate: says } = words
  const relations = relationCodes.map((value) => ({ value, label: says.sign.relations[value] }))
  // Made once: however often the button is pressed on a bad network, one answer is written.
  const [entryId] = useState(() => v7())
  const [signature, setSignature] = useState<Signature | null>(null)
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
            : signature.form === 'typed' && !isSameName(signature.name, name)
              ? lacks.sameName
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
          onChange={(chosen) => onHalf(withRelation(half, chosen, customerName))}
          flow="column"
        />
        <TextField
          label={says.sign.name}
          autoComplete="name"
          value={name}
          onChange={(typed) => onHalf({ ...half, name: typed })}
        />
        <SignaturePad label={says.sign.signature} onChange={setSignature} />
        <CheckGroup
          label={says.sign.before}
          flow="column"
          options={[
            { value: 'electronic', ...says.sign.electronic },
            { value: 'parts', label: says.sign.parts },
          ]}
          values={agreements}
          onChange={(chosen) => onHalf({ ...half, agreements: chosen })}
        />
        {problem === null ? null : <ProblemNotice problem={customerProblem(words, problem)} />}
        {isOutOfDate(problem) ? (
          <Button onClick={() => location.reload()}>{says.sign.loadAgain}</Button>
        ) : null}
        <Button look="wide" whyNot={missing} busy={sending} onClick={() => void send()}>
          {says.sign.send}
        </Button>
      </div>
    </Section>
  )
}
