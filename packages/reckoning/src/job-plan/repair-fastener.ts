import type { RoadPosition } from '../wheels.ts'
import { repairFastenerKey } from './step-keys.ts'
import type { StepDraft } from './step-of.ts'

/**
 * Damaged studs, nuts or bolts are renewed while the wheel is off, before it goes on again.
 *
 * @limits The vehicle maker's parts and instructions govern.
 * @source Common practice, no source.
 */
export const repairFastener = (wheel: RoadPosition): StepDraft => ({
  stepKey: repairFastenerKey(wheel),
  code: 'repair-fastener',
  values: {},
  wheel,
  closedBy: 'step.closed',
  needs: ['value', 'photo'],
  waitsFor: [`${wheel}.wheel.off`],
})
