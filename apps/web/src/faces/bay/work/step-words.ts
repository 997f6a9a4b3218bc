import type { Step } from '@bayledger/reckoning/step'
import { steps } from '@bayledger/wording/en/steps'
import { wheels } from '@bayledger/wording/en/wheels'
import { workCautions } from '@bayledger/wording/en/work-cautions'
import { figureSource, stepDoes, stepHow } from '@bayledger/wording/steps'
import { workCautionWords } from '@bayledger/wording/work-cautions'

/** "Take the wheel off: right rear" */
export const stepTitle = (step: Step): string =>
  step.wheel === null ? stepDoes(steps, step) : `${stepDoes(steps, step)}: ${wheels.names[step.wheel]}`

export const howWords = (step: Step): string => stepHow(steps, step)

/** The cautions of a step as one paragraph; `null` where it has none. */
export const cautionWords = ({ cautions }: Step): string | null => {
  const words = cautions.flatMap((caution) => workCautionWords(workCautions, caution) ?? [])
  return words.length === 0 ? null : words.join(' ')
}

/** Whose figure a step shows; empty for a step without one. */
export const sourceWords = ({ figure }: Step): string => (figure ? figureSource(steps, figure.source) : '')

/** The step in the undo button: "RR · Balance the wheel". */
export const undoWords = (step: Step): string =>
  step.wheel === null ? stepDoes(steps, step) : `${step.wheel} · ${stepDoes(steps, step)}`
