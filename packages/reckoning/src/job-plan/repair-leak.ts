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
 * Once the inside was seen: what closes the leak. Whether a hole may be repaired is computed from the look; a bead or a
 * rim is cleaned and sealed here, a stem gets its parts.
 *
 * @units A hole of at most 1/4 inch (6 mm); more than 2/32 inch of tread.
 * @limits The tire maker's own rules govern, above all for tires that run flat or carry sealant.
 * @source A trade association's guidance on puncture repair, from memory.
 */
export const judgeLeak = (wheel: WheelPosition): StepDraft & { readonly stepKey: string } => ({
  stepKey: `${wheel}.leak.judge`,
  code: 'judge-leak',
  values: {},
  wheel,
  closedBy: 'step.closed',
  needs: ['value', 'photo'],
  waitsFor: [`${wheel}.leak.find`, insideKey(wheel)],
  cautions: ['repair'],
})

/**
 * The repair of the holes that the look inside has measured; a work of its own, because it is priced after that look.
 *
 * @limits The tire maker's own rules govern.
 * @source A trade association's guidance on puncture repair, from memory: plug and patch together, from inside.
 */
export const repairPuncture = (wheel: WheelPosition, after: readonly string[]): StepDraft => ({
  stepKey: `${wheel}.leak.repair`,
  code: 'repair-leak',
  values: {},
  wheel,
  closedBy: 'step.closed',
  needs: ['value'],
  waitsFor: after,
  cautions: ['repair'],
})
