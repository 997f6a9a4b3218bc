import { type WorkCautionName, workCautions } from '../cautions/work-cautions.ts'
import type { SafetyFigure, SpecificationSheet } from '../sheet.ts'
import { unverifiedFigures } from '../sheet.ts'
import type { ClosingKind, Step, StepCode, StepFigure, TorqueRound } from '../step.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'
import { stepHeight } from './step-heights.ts'

/** What a step builder says of a step; the rest has a usual value. */
export type StepWords = {
  readonly stepKey: string
  readonly code: StepCode
  readonly wheel?: WheelPosition
  readonly does: string
  readonly how: string
  readonly closedBy: ClosingKind
  readonly round?: TorqueRound
  readonly figure?: StepFigure | null
  readonly needs?: readonly Step['needs'][number][]
  readonly waitsFor?: readonly string[]
  readonly rests?: SafetyFigure
  readonly caution?: WorkCautionName
  readonly comesFrom?: WheelPosition
}

/**
 * Fills a step: one that rests on a figure nobody has verified yet stays shut until a second person confirms it.
 *
 * @source This program's own rule.
 */
export const stepOf = (sheet: SpecificationSheet, bundleKey: string | null, words: StepWords): Step => {
  const unverified = words.rests && unverifiedFigures(sheet).includes(words.rests) ? words.rests : null
  return {
    stepKey: words.stepKey,
    code: words.code,
    wheel: words.wheel ?? null,
    does: words.does,
    how: words.how,
    closedBy: words.closedBy,
    round: words.round ?? null,
    opensTire: words.code === 'open-tire',
    height: stepHeight(words.code, words.wheel ?? null),
    figure: words.figure ?? null,
    needs: [...(words.needs ?? [])],
    waitsFor: [...(words.waitsFor ?? []), ...(unverified ? [confirmationKey(unverified)] : [])],
    unverified,
    caution: words.caution ? workCautions[words.caution].number : null,
    bundleKey,
    ...(words.comesFrom ? { comesFrom: words.comesFrom } : {}),
  }
}

const confirmationKeys = {
  placard: 'vehicle.confirm.placard',
  studTorque: 'vehicle.confirm.stud-torque',
  frequency: 'vehicle.confirm.frequency',
} as const satisfies Record<SafetyFigure, string>

/**
 * The step by which a second person confirms a figure that nobody has verified.
 *
 * @source This program's own rule.
 */
export const confirmationKey = (figure: SafetyFigure): string => confirmationKeys[figure]

/**
 * A wheel's torque as the sheet has it, to the digit, with where it was read.
 *
 * @units As the maker prints it.
 * @source The sheet; the vehicle maker's figure governs.
 */
export const studTorque = (sheet: SpecificationSheet): StepFigure => ({
  kind: 'torque',
  torque: sheet.studs.torque,
  source: sheet.sources.studTorque.reference,
})

/**
 * The label's pressure for a wheel's place; `null` where the sheet has none.
 *
 * @units psi, cold.
 * @source The sheet; the vehicle maker's label governs.
 */
export const placardFigure = (sheet: SpecificationSheet, wheel: WheelPosition): StepFigure | null => {
  const printed = sheet.placard[axleOf(wheel)]
  return printed ? { kind: 'placard', psi: printed.psi, source: sheet.sources.placard.reference } : null
}

/**
 * The frequency that the vehicle listens to; `null` where the sheet has no sensor or nobody named a source.
 *
 * @units MHz
 * @source The sheet; the vehicle maker's figure governs.
 */
export const frequencyFigure = (sheet: SpecificationSheet): StepFigure | null =>
  sheet.sensor && sheet.sources.frequency
    ? { kind: 'frequency', megahertz: sheet.sensor.frequencyMHz, source: sheet.sources.frequency.reference }
    : null
