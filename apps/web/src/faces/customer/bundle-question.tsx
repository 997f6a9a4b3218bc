import type { Answer } from '@bayledger/reckoning/estimate'
import { money } from '../../lib/format.ts'
import { ChoiceGroup } from '../../ui/choice-group.tsx'
import type { Estimate, Offer } from './estimate-answers.ts'
import { useWords } from './spoken.tsx'

type BundleQuestionProps = {
  offer: Offer
  /** What it replaces, where it is an alternative. */
  insteadOf: string | null
  look: Estimate['look']
  /** The warning that goes with a No or a Later to this offer, given the other answers. */
  cautions: readonly Offer['cautions'][number][]
  isAsked: boolean
  /** Where it must not be driven, advice about driving holds only afterwards. */
  mayDrive: boolean
  answer: Answer | null
  onAnswer: (answer: Answer) => void
}

/** One decision: its price first, why, what is in it, and Yes, No or Later. A No or Later shows its caution once, in the same type. */
export function BundleQuestion({
  offer,
  insteadOf,
  look,
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
      <p>{offer.reason}</p>
      {offer.since === null ? null : (
        <p>{offer.since.is === 'new' ? says.isNew : says.changed(money(offer.since.beforeCents))}</p>
      )}
      {offer.coverNote === undefined ? null : <p>{offer.coverNote}</p>}
      {insteadOf === null ? null : <p>{says.insteadOf(insteadOf)}</p>}
      <details open={offer.coverNote !== undefined}>
        <summary>{says.eachPrice}</summary>
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
      {offer.agreedBefore ? (
        <p>{says.lookTerms[look.terms](money(look.cents))}</p>
      ) : isAsked ? (
        <ChoiceGroup
          label={says.yours(offer.title)}
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
    </article>
  )
}
