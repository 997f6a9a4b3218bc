import type { WheelPosition } from '../wheels.ts'
import { insideKey } from './step-keys.ts'
import type { StepDraft } from './step-of.ts'
import type { TireCare } from './tire-dangers.ts'

/**
 * Where the air goes: stem and core, tread, beads, rim, sidewall, in that order. Spray finds a leak with the air that is
 * in the tire already; a tire that was run low gets none before somebody has looked inside.
 *
 * @source Common practice, no source. The look first: see `careOf`.
 */
export const findLeak = (wheel: WheelPosition, { runLow }: TireCare): StepDraft => ({
  stepKey: `${wheel}.leak.find`,
  code: runLow ? 'find-leak-after-look' : 'find-leak',
  values: {},
  wheel,
  closedBy: 'step.closed',
  needs: ['value'],
  waitsFor: runLow ? [insideKey(wheel)] : [],
  cautions: runLow ? ['runLow'] : [],
})

/**
 * Once the inside was seen: whether the tire may be repaired, and the repair of what was found.
 *
 * @units A hole of at most 1/4 inch (6 mm); more than 2/32 inch of tread.
 * @limits The tire maker's own rules govern, above all for tires that run flat or carry sealant.
 * @source A trade association's guidance on puncture repair, from memory.
 */
export const repairLeak = (wheel: WheelPosition): StepDraft[] => [
  {
    stepKey: `${wheel}.leak.judge`,
    code: 'judge-leak',
    values: {},
    wheel,
    closedBy: 'step.closed',
    needs: ['value', 'photo'],
    waitsFor: [`${wheel}.leak.find`, insideKey(wheel)],
    cautions: ['repair'],
  },
  {
    stepKey: `${wheel}.leak.repair`,
    code: 'repair-leak',
    values: {},
    wheel,
    closedBy: 'step.closed',
    needs: ['value'],
    waitsFor: [`${wheel}.leak.judge`],
    cautions: ['repair'],
  },
]
