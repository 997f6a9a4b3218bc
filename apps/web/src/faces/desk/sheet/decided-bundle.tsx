import type { Answer } from '@bayledger/reckoning/estimate'
import type { LanguageCode } from '@bayledger/wording/language'
import type { ShownBundle } from '@bayledger/wording/shown-estimate'
import { money } from '../../../lib/format.ts'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'

type QuestionProps = {
  bundle: ShownBundle
  /** The same as the customer hears it. */
  heard: ShownBundle
  language: LanguageCode
  cautions: readonly ShownBundle['cautions'][number][]
  options: readonly { readonly value: Answer; readonly label: string }[]
  answer: Answer | null
  onAnswer: (answer: Answer) => void
}

/** What is said to the customer is in their language; what the advisor reads is beside it. */
export function BundleQuestion({
  bundle,
  heard,
  language,
  cautions,
  options,
  answer,
  onAnswer,
}: QuestionProps) {
  const inTheirs = (number: string, words: string) =>
    heard.cautions.find((caution) => caution.number === number)?.words ?? words
  return (
    <div>
      {language === 'en' ? null : (
        <p lang={language}>
          <strong>{heard.title}</strong>
        </p>
      )}
      <ChoiceGroup
        label={`${bundle.title}, ${money(bundle.totalCents)}`}
        options={options}
        value={answer}
        onChange={onAnswer}
      />
      {answer !== null && answer !== 'authorized'
        ? cautions.map(({ number, words }) => (
            <p key={number}>
              <strong>Say this:</strong> <span lang={language}>{inTheirs(number, words)}</span>
              {language === 'en' ? null : <span className="quiet"> ({words})</span>}
            </p>
          ))
        : null}
    </div>
  )
}
