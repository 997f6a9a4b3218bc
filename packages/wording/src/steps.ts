import type { RotationDoubt } from '@bayledger/reckoning/rotation/rotation-doubt'
import type { RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import type {
  Step,
  StepCode,
  StepFigure,
  StepFigureSource,
  StepNamed,
  StepOfCode,
} from '@bayledger/reckoning/step'

/** A sentence, or a function that makes it from a step's own values. */
type Said<S> = string | ((step: S) => string)
type NamedOf<Code extends StepCode> = StepNamed & { readonly code: Code; readonly values: object }

/** What a person reads of the job plan's steps. */
export type StepsWording = {
  /** The title of a step, at most 80 characters; the wheel is shown beside it. */
  readonly does: { readonly [Code in StepCode]: Said<NamedOf<Code>> }
  /** How a step is done, at most 1,200 characters. */
  readonly how: { readonly [Code in StepCode]: Said<StepOfCode<Code>> }
  readonly patterns: Readonly<Record<RotationPattern, string>>
  readonly doubts: Readonly<Record<RotationDoubt, string>>
  readonly sources: Readonly<Record<Exclude<StepFigureSource['from'], 'sheet' | 'half-of-sheet'>, string>>
  /** The source of the first round's figure, from the words of the figure's own source. */
  readonly halfOf: (reference: string) => string
  /** The unit that is shown after a number of minutes. */
  readonly minutes: Readonly<Record<(StepFigure & { readonly kind: 'minutes' })['of'], string>>
}

type DoesWording = Pick<StepsWording, 'does'>

/** A step's title: "Take the wheel off". A step of an earlier plan keeps the title that was written for it. */
export const stepDoes = ({ does }: DoesWording, step: StepNamed): string =>
  step.values === null ? step.asWritten.does : said(does[step.code], step)

/** How a step is done; may be empty. A step of an earlier plan keeps its own words. */
export const stepHow = ({ how }: Pick<StepsWording, 'how'>, step: Step): string =>
  step.values === null ? step.asWritten.how : said(how[step.code], step)

/** The source of a step's figure: as a person typed it, else this language's name for it. */
export const figureSource = (
  { sources, halfOf }: Pick<StepsWording, 'sources' | 'halfOf'>,
  source: StepFigureSource,
): string => {
  if (source.from === 'half-of-sheet') return halfOf(source.reference)
  return source.from === 'sheet' ? source.reference : sources[source.from]
}

const said = (words: Said<never>, step: object): string =>
  typeof words === 'function' ? words(step as never) : words
