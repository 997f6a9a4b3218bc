import { steps } from '../../wording/src/en/steps.ts'
import { stepDoes, stepHow } from '../../wording/src/steps.ts'
import type { Step } from '../src/step.ts'

/** What a technician reads of a step in English. */
export const howOf = (step: Step): string => stepHow(steps, step)
export const doesOf = (step: Step): string => stepDoes(steps, step)
