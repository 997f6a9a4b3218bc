import { languageNames } from '@bayledger/wording/language-names'
import { ChoiceGroup } from '../../ui/choice-group.tsx'

const options = (['en', 'es'] as const).map((value) => ({ value, label: languageNames[value] }))

type LanguageChoiceProps = {
  label: string
  value: 'en' | 'es'
  onChange: (language: 'en' | 'es') => void
}

/** Each language by its own name, so that whoever reads only that one finds it. */
export const LanguageChoice = (props: LanguageChoiceProps) => <ChoiceGroup options={options} {...props} />
