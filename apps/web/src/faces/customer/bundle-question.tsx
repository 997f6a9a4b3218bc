import type { Answer } from '@bayledger/reckoning/estimate'
import { money } from '../../lib/format.ts'
import { ChoiceGroup } from '../../ui/choice-group.tsx'
import type { Estimate, Offer } from './estimate-answers.ts'
import { useWords } from './spoken.tsx'

type BundleQuestionProps = {
  offer: Offer
  /** What it replaces, where it is an alternative. */
  insteadOf: string | null
  /** Its reason is one of the findings above: it is not said again. */
  isReasonSaid: boolean
  /** The warning that goes with a No or a Not today to this offer, given the other answers. */
  cautions: readonly Offer['cautions'][number][]
  isAsked: boolean
  /** Where it must not be driven, advice about driving holds only afterwards. */
  mayDrive: boolean
  answer: Answer | null
  onAnswer: (answer: Answer) => void
}

/** One decision: its price first, why, Yes, No or Not today, and what is in it. All but a Yes shows its caution once, in the same type. */
export function BundleQuestion({
  offer,
  insteadOf,
  isReasonSaid,
  cautions,
  isAsked,
  mayDrive,
  answer,
  onAnswer,
}: BundleQuestionProps) {
  const { answers, question: says } = useWords().customerEstimate
  const given = answer ?? offer.answer
  const options = (['authorized', 'declined', 'deferred'] as const).map((value) => ({
    value,
    label: answers[value],
  }))
  // After a Yes there is only a No to say.
  const onlyNo = [{ value: 'declined' as const, label: says.onlyNo }]
  return (
    <article className="bundle">
      <header className="bundle-head">
        <h3>{offer.title}</h3>
        <p className="bundle-price">{money(offer.totalCents)}</p>
      </header>
      {isReasonSaid ? null : <p>{offer.reason}</p>}
      {offer.since === null ? null : (
        <p>{offer.since.is === 'new' ? says.isNew : says.changed(money(offer.since.beforeCents))}</p>
      )}
      {offer.coverNote === undefined ? null : <p>{offer.coverNote}</p>}
      {insteadOf === null ? null : <p>{says.insteadOf(insteadOf)}</p>}
      {isAsked ? (
        <ChoiceGroup
          about={offer.title}
          label={says.yours}
          options={offer.mayTakeBack ? onlyNo : options}
          value={answer}
          onChange={onAnswer}
        />
      ) : (
        <p>
          {says.given} <strong>{offer.answer === null ? says.notGiven : answers[offer.answer]}</strong>
        </p>
      )}
      {given !== null && given !== 'authorized'
        ? cautions.map(({ number, words }) => (
            <p key={number} className="bundle-caution">
              {mayDrive || offer.removesDanger ? '' : says.onceDriven}
              {words}
            </p>
          ))
        : null}
      <EachPrice offer={offer} />
    </article>
  )
}

type AgreedLookProps = { offer: Offer | null; look: Estimate['look']; cents: number }

/** The inspection, which needs no answer: what is owed for it with these answers, and the terms that were agreed. */
export function AgreedLook({ offer, look, cents }: AgreedLookProps) {
  const { look: title, question: says } = useWords().customerEstimate
  return (
    <article className="bundle">
      <header className="customer-total">
        <h3>{title}</h3> <span className="bundle-amount">{money(cents)}</span>
      </header>
      {offer === null ? null : (
        <>
          <p>{says.lookTerms[look.terms](money(look.cents))}</p>
          {/* Where it may be waived its price is in the terms alone: in the estimate it is nothing. */}
          {look.terms === 'charged' ? (
            <EachPrice offer={offer} reason={offer.reason} />
          ) : (
            <p className="quiet">{offer.reason}</p>
          )}
        </>
      )}
    </article>
  )
}

function EachPrice({ offer, reason }: { offer: Offer; reason?: string }) {
  const { question: says } = useWords().customerEstimate
  return (
    <details open={offer.coverNote !== undefined}>
      <summary>{says.eachPrice}</summary>
      {reason === undefined ? null : <p>{reason}</p>}
      <ul className="bundle-lines">
        {offer.lines.map((line) => (
          <li key={line.lineKey}>
            <span>
              {line.words}
              {line.cover === undefined ? null : <small className="bundle-cover">{line.cover}</small>}
            </span>{' '}
            <span className="bundle-amount">{money(line.amountCents)}</span>
          </li>
        ))}
        <li>
          <span>{says.tax}</span> <span className="bundle-amount">{money(offer.taxCents)}</span>
        </li>
      </ul>
    </details>
  )
}
