import { cameFrom, type Moves, movedPlaces } from '../rotation/moves.ts'
import { patternTitle, type RotationPattern } from '../rotation/rotation-pattern.ts'
import type { SpecificationSheet } from '../sheet.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'
import { frequencyFigure, type StepWords } from './step-of.ts'

/**
 * A new tire is held against the sheet before the old one comes off; its number is kept for its registration.
 *
 * @limits The vehicle maker's label governs.
 * @source Common practice, no source; the number is kept for the registration of 49 CFR 574.
 */
export const matchTire = (sheet: SpecificationSheet, wheel: WheelPosition): StepWords => {
  const named = sheet.tire[axleOf(wheel)]
  return {
    stepKey: `${wheel}.tire.match`,
    code: 'match-tire',
    wheel,
    does: 'Match the new tire, read its number',
    how: `The sheet has ${named ? `${named.size}, ${named.loadClass}` : 'no tire for this place: read the label'}. Load index and speed symbol at least the label's. Record the whole identification number.`,
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
export const readOtherWheel = (sheet: SpecificationSheet, wheel: WheelPosition): StepWords => {
  const hears = sheet.system === 'direct'
  return {
    stepKey: otherReadKey(wheel),
    code: 'read-other-wheel',
    wheel,
    does: "Read the other set's wheel",
    how: [
      'Tire size, date code, tread, damage, pressure.',
      ...(hears
        ? [
            "Trigger its sensor, away from the vehicle: ID, and the sheet's frequency. No sensor, or silent twice: stop. Move the sensors over, sell sensors, or decline.",
          ]
        : []),
    ].join(' '),
    closedBy: 'step.closed',
    figure: hears ? frequencyFigure(sheet) : null,
    needs: ['value'],
    ...(hears ? { rests: 'frequency' } : {}),
  }
}

export const rotationTiresKey = 'vehicle.rotation.tires'

/**
 * The tires are asked before a wheel is touched; what speaks against the pattern already is said.
 *
 * @limits The vehicle maker's pattern governs.
 * @source Common practice, no source.
 */
export const askTires = (pattern: RotationPattern, against: readonly string[]): StepWords => ({
  stepKey: rotationTiresKey,
  code: 'check-tires-for-rotation',
  does: 'See that the tires allow the rotation',
  how:
    against.length > 0
      ? `Not ${patternTitle(pattern)}: ${against.join(' ')} Nothing is moved; tell the desk.`
      : `Planned: ${patternTitle(pattern)}. Arrows that roll one way only, sizes, load marks, a spare's limits: each tire must be right for its new place. If one is not, stop. The vehicle maker's pattern governs.`,
  closedBy: 'step.closed',
  needs: ['value'],
})

/**
 * The spare leaves its place for a rotation of five.
 *
 * @source Common practice, no source.
 */
export const takeSpareOut = (after: readonly string[]): StepWords => ({
  stepKey: 'SP.wheel.out',
  code: 'take-spare-out',
  wheel: 'SP',
  does: 'Take the spare out',
  how: 'Mark the tire SP. Full-size, of the same kind as the others, no damage, its age read.',
  closedBy: 'step.closed',
  needs: ['value'],
  waitsFor: after,
})

/**
 * Another wheel becomes the spare.
 *
 * @source Common practice, no source.
 */
export const stowSpare = (from: WheelPosition, after: readonly string[]): StepWords => ({
  stepKey: 'SP.wheel.stow',
  code: 'stow-spare',
  wheel: 'SP',
  does: 'Stow the new spare',
  how: `The wheel marked ${from} becomes the spare. Hold it as the vehicle maker says, so that it cannot come loose.`,
  closedBy: 'step.closed',
  waitsFor: after,
  comesFrom: from,
})

/**
 * Which ID must then stand where: what the vehicle stored follows the wheels.
 *
 * @source This program's own rule: a sensor goes where its wheel goes.
 */
export const movedIdWords = (moves: Moves): string => {
  const places = movedPlaces(moves).map(
    (place) => `${place} the ID that was read at ${cameFrom(moves, place)}`,
  )
  return places.length === 0 ? '' : `After this rotation: ${places.join(', ')}.`
}
