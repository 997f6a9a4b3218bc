import type { WheelPosition } from '../wheels.ts'
import type { StepWords } from './step-of.ts'

/**
 * Where the air goes: stem and core, tread, beads, rim, sidewall, in that order.
 *
 * @source Common practice, no source.
 */
export const findLeak = (wheel: WheelPosition): StepWords => ({
  stepKey: `${wheel}.leak.find`,
  code: 'find-leak',
  wheel,
  does: 'Find where the air goes',
  how: 'Stem and core, tread, beads, rim, sidewall, in that order; spray or dunk. Record the place. Filling alone is not a repair.',
  closedBy: 'step.closed',
  needs: ['value'],
})

/**
 * Once the inside was seen: whether the tire may be repaired, and the repair of what was found.
 *
 * @units A hole of at most 1/4 inch (6 mm); more than 2/32 inch of tread.
 * @limits The tire maker's own rules govern, above all for tires that run flat or carry sealant.
 * @source A trade association's guidance on puncture repair, from memory.
 */
export const repairLeak = (wheel: WheelPosition): StepWords[] => [
  {
    stepKey: `${wheel}.leak.judge`,
    code: 'judge-leak',
    wheel,
    does: 'Decide whether it may be repaired',
    how: `A hole: only in the tread between the outer grooves, at most ${largestHoleInches} in (${largestHoleMillimeters} mm), over no other repair, more than ${leastTread32nds}/32 in of tread left, never run low. A plug from outside is no repair. Photo. Not repairable: stop and tell the desk.`,
    closedBy: 'step.closed',
    needs: ['value', 'photo'],
    waitsFor: [`${wheel}.leak.find`, `${wheel}.tire.inside`],
    caution: 'repair',
  },
  {
    stepKey: `${wheel}.leak.repair`,
    code: 'repair-leak',
    wheel,
    does: 'Repair what leaks',
    how: 'A hole: plug and patch together, from inside. Bead or rim: cleaned and sealed. Stem or core: its new parts. Record the place, angle and unit.',
    closedBy: 'step.closed',
    needs: ['value'],
    waitsFor: [`${wheel}.leak.judge`],
    caution: 'repair',
  },
]

/** Limits of a puncture repair as a trade association's guidance has them, from memory; a tire maker's own govern. */
const largestHoleInches = '1/4'
const largestHoleMillimeters = 6
const leastTread32nds = 2
