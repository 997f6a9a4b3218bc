import type { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'

/** A finding's name as people read it, with a capital to begin a line: `tire-low` is "Tire low". */
export type FindingTitles = Readonly<Record<FindingCode, string>>

/** What the shop does next about a finding. */
export type FindingActions = Readonly<Record<FindingCode, string>>

/** The sentence for one wheel or the whole vehicle, for several wheels, and for all four if that reads better. */
export type Wordings = { readonly one: string; readonly many?: string; readonly all?: string }

/**
 * The sentence that a customer reads for a finding. A form, named by the finding's figures, replaces the ordinary
 * wordings. Slots: {wheel} and {wheels} names of wheels; {name} a number as it is; {name:p} a pressure with the
 * decimals of its unit.
 */
export type Sentence = Wordings & { readonly forms?: Readonly<Record<string, Wordings>> }

/** A sentence for every finding, with every form that its rule may give it. */
export type FindingSentences = {
  readonly [Code in FindingCode]: Code extends keyof FindingForms
    ? Wordings & { readonly forms: Readonly<Record<FindingForms[Code], Wordings>> }
    : Wordings
}

/** The forms that the rules name in a finding's figures. */
type FindingForms = {
  'run-low-damage-possible': 'no-label' | 'told'
  'stem-leaking': 'leaks' | 'cracked'
  'tire-unsafe':
    | 'bulge'
    | 'cord-showing'
    | 'cut-to-cord'
    | 'worn'
    | 'run-low-damage'
    | 'cord'
    | 'separation'
    | 'stowed'
  'tire-low': 'under-flash' | 'without-light' | 'only-cold'
  'cold-weather': 'beside-a-stop'
  'weather-and-seepage': 'temperature-unknown' | 'beside-a-stop'
  'altitude-change': 'beside-a-stop'
  'slow-leak': 'within-a-day' | 'low-already'
  'set-of-four-worth-offering': 'several' | 'none-answers'
  'tire-old': 'very-old'
}
