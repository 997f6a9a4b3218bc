import type { ClosingKind, Step } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

/** A step of a plan that has nothing but what the rules about its place in the plan read. */
export const plannedStep = (
  stepKey: string,
  wheel: WheelPosition | null,
  closedBy: ClosingKind,
  waitsFor: readonly string[] = [],
): Step => ({
  stepKey,
  code: 'other',
  values: null,
  asWritten: { does: stepKey, how: '' },
  wheel,
  closedBy,
  round: null,
  opensTire: false,
  height: 'floor',
  figure: null,
  needs: [],
  waitsFor: [...waitsFor],
  unverified: null,
  cautions: [],
  bundleKey: null,
})
