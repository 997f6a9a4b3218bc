import type { RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import type { Step } from '@bayledger/reckoning/step'

/** The pattern by which wheels move after this step; `null` for any other step, and where the sheet lets none move. */
export const patternOf = (step: Step): RotationPattern | null =>
  step.code === 'check-tires-for-rotation' && step.values?.doubts.length === 0 ? step.values.pattern : null
