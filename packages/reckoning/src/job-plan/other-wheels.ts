import type { RotationDoubt } from '../rotation/rotation-doubt.ts'
import type { RotationPattern } from '../rotation/rotation-pattern.ts'
import { type SpecificationSheet, tiresOf } from '../sheet.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'
import { frequencyFigure, type StepDraft } from './step-of.ts'

/**
 * A new tire is compared with the sheet before the old one comes off; its number is kept for its registration.
 *
 * @limits The vehicle maker's label governs.
 * @source Common practice, no source; the number is kept for the registration of 49 CFR 574.
 */
export const matchTire = (sheet: SpecificationSheet, wheel: WheelPosition): StepDraft => {
  const named = tiresOf(sheet)?.[axleOf(wheel)]
  return {
    stepKey: `${wheel}.tire.match`,
    code: 'match-tire',
    values: { tire: named ? { size: named.size, loadClass: named.loadClass } : null },
    wheel,
    closedBy: 'step.closed',
    needs: ['value'],
  }
}

/**
 * The step by which a wheel of the other set is read.
 *
 * @source This program's own rule.
 */
export const otherReadKey = (wheel: WheelPosition): string => `${wheel}.other.read`

/**
 * The other season's wheel is looked at before anything comes off. Where the vehicle listens for sensors, a wheel
 * without one does not go on: that would silence a working system.
 *
 * @units MHz
 * @source 49 USC 30122(b), as an agency letter to the trade reads it, from memory. The rest: common practice, no source.
 */
export const readOtherWheel = (sheet: SpecificationSheet, wheel: WheelPosition): StepDraft => {
  const hears = sheet.system === 'direct'
  return {
    stepKey: otherReadKey(wheel),
    code: 'read-other-wheel',
    values: { hearsSensors: hears },
    wheel,
    closedBy: 'step.closed',
    figure: hears ? frequencyFigure(sheet) : null,
    needs: ['value'],
    ...(hears ? { rests: 'frequency' } : {}),
  }
}

export const rotationTiresKey = 'vehicle.rotation.tires'

/**
 * The tires are checked before a wheel is touched; `doubts` is what already speaks against the pattern.
 *
 * @limits The vehicle maker's pattern governs.
 * @source Common practice, no source.
 */
export const checkTires = (pattern: RotationPattern, doubts: readonly RotationDoubt[]): StepDraft => ({
  stepKey: rotationTiresKey,
  code: 'check-tires-for-rotation',
  values: { pattern, doubts: [...doubts] },
  closedBy: 'step.closed',
  needs: ['value'],
})

/**
 * The spare leaves its place: for a rotation of five, or to be opened.
 *
 * @source Common practice, no source.
 */
export const takeSpareOut = (after: readonly string[]): StepDraft => ({
  stepKey: 'SP.wheel.out',
  code: 'take-spare-out',
  values: {},
  wheel: 'SP',
  closedBy: 'step.closed',
  needs: ['value'],
  waitsFor: after,
})

/**
 * The spare is looked at before it goes on in place of a wheel that must not be used.
 *
 * @limits The vehicle maker's rules for its spare govern.
 * @source Common practice, no source.
 */
export const takeSoundSpareOut = (after: readonly string[]): StepDraft => ({
  stepKey: 'SP.wheel.out',
  code: 'take-sound-spare-out',
  values: {},
  wheel: 'SP',
  closedBy: 'step.closed',
  needs: ['value'],
  waitsFor: after,
  cautions: ['spare'],
})

/** The step in which a wheel is stowed as the spare. */
export const spareStowKey = 'SP.wheel.stow'

/**
 * Another wheel becomes the spare.
 *
 * @source Common practice, no source.
 */
export const stowSpare = (from: WheelPosition, after: readonly string[]): StepDraft => ({
  stepKey: spareStowKey,
  code: 'stow-spare',
  values: {},
  wheel: 'SP',
  closedBy: 'step.closed',
  waitsFor: after,
  comesFrom: from,
})

/**
 * The spare goes back to where it was.
 *
 * @source Common practice, no source.
 */
export const putSpareBack = (after: readonly string[]): StepDraft => ({
  stepKey: spareStowKey,
  code: 'put-spare-back',
  values: {},
  wheel: 'SP',
  closedBy: 'step.closed',
  waitsFor: after,
})
