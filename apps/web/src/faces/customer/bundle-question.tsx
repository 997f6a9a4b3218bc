import type { Answer } from '@bayledger/reckoning/estimate'
import { money } from '../../lib/format.ts'
import { ChoiceGroup } from '../../ui/choice-group.tsx'
import type { Estimate, Offer } from './estimate-answers.ts'

const answerWords = { authorized: 'Yes', declined: 'No', deferred: 'Later' } as const satisfies Record<
  Answer,
  string
>
const options = (Object.keys(answerWords) as Answer[]).map((value) => ({ value, label: answerWords[value] }))

/** After a Yes there is only a No to say. */
const onlyNo = [{ value: 'declined' as const, label: 'No, I no longer want it' }]

type BundleQuestionProps = {
  offer: Offer
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
  look,
  cautions,
  isAsked,
  mayDrive,
  answer,
  onAnswer,
}: BundleQuestionProps) {
  const given = answer ?? offer.answer
  return (
    <article className="bundle">
      <header className="bundle-head">
        <h3>{offer.title}</h3>
        <p className="bundle-price">{money(offer.totalCents)}</p>
      </header>
      <p>{offer.reason}</p>
      <details>
        <summary>See each price</summary>
        <ul className="bundle-lines">
          {offer.lines.map((line) => (
            <li key={line.lineKey}>
              <span>{line.words}</span> <span className="bundle-amount">{money(line.amountCents)}</span>
            </li>
          ))}
          <li>
            <span>Tax</span> <span className="bundle-amount">{money(offer.taxCents)}</span>
          </li>
        </ul>
      </details>
      {offer.agreedBefore ? (
        <p>{lookWords(look)}</p>
      ) : isAsked ? (
        <ChoiceGroup
          label={`${offer.title}: your answer`}
          options={offer.mayTakeBack ? onlyNo : options}
          value={answer}
          onChange={onAnswer}
        />
      ) : (
        <p>
          Your answer: <strong>{offer.answer === null ? 'not given' : answerWords[offer.answer]}</strong>
        </p>
      )}
      {given !== null && given !== 'authorized'
        ? cautions.map(({ number, words }) => (
            <p key={number} className="bundle-caution">
              {mayDrive || offer.removesDanger ? '' : 'Once it may be driven again: '}
              {words}
            </p>
          ))
        : null}
    </article>
  )
}

const lookWords = ({ terms, cents }: Estimate['look']): string => {
  switch (terms) {
    case 'charged':
      return 'You agreed to this before we began. It is charged whatever you answer.'
    case 'waived-with-work':
      return `You agreed to this before we began. It is free if you say Yes to any work, and ${money(cents)} if not.`
    case 'waived':
      return 'This is free of charge.'
  }
}
