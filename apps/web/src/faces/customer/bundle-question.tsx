import type { CustomerOrder } from '@bayledger/contract/customer-face'
import type { Answer } from '@bayledger/reckoning/estimate'
import { money } from '../../lib/format.ts'
import { ChoiceGroup } from '../../ui/choice-group.tsx'

type Offer = NonNullable<CustomerOrder['estimate']>['bundles'][number]

const answerWords = { authorized: 'Yes', declined: 'No', deferred: 'Later' } as const satisfies Record<
  Answer,
  string
>
const options = (Object.keys(answerWords) as Answer[]).map((value) => ({ value, label: answerWords[value] }))

type BundleQuestionProps = { offer: Offer; answer: Answer | null; onAnswer: (answer: Answer) => void }

/** One decision: its price first, why, what is in it, and Yes, No or Later. A No or Later shows its caution once, in the same type. */
export function BundleQuestion({ offer, answer, onAnswer }: BundleQuestionProps) {
  const given = answer ?? offer.answer
  return (
    <article className="bundle">
      <header className="bundle-head">
        <h3>{offer.title}</h3>
        <p className="bundle-price">{money(offer.totalCents)}</p>
      </header>
      <p>{offer.reason}</p>
      <details>
        <summary>What is in it</summary>
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
      {offer.answerable ? (
        <ChoiceGroup
          label={`${offer.title}: your answer`}
          options={options}
          value={answer}
          onChange={onAnswer}
        />
      ) : (
        <p>
          Your answer: <strong>{offer.answer === null ? 'not given' : answerWords[offer.answer]}</strong>
        </p>
      )}
      {given !== null && given !== 'authorized'
        ? offer.cautions.map(({ number, words }) => (
            <p key={number} className="bundle-caution">
              {words}
            </p>
          ))
        : null}
    </article>
  )
}
