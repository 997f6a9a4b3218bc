import { type WorkCautionName, workCautions } from '../cautions/work-cautions.ts'
import {
  placardOf,
  type SafetyFigure,
  type SpecificationSheet,
  sensorOf,
  studsOf,
  unverifiedFigures,
} from '../sheet.ts'
import type { ClosingKind, PlannedStep, StepCommon, StepFigure } from '../step.ts'
import { roundTorque } from '../torque/rounds.ts'
import type { TorqueRound } from '../torque/torque-rounds.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'
import { stepHeight } from './step-heights.ts'

type OwnOf<S> = S extends PlannedStep ? Omit<S, keyof StepCommon> : never
/** What a step builder must give; the rest has defaults. */
export type StepDraft = OwnOf<PlannedStep> & {
  readonly stepKey: string
  readonly wheel?: WheelPosition
  readonly closedBy: ClosingKind
  readonly round?: TorqueRound
  readonly figure?: StepFigure | null
  readonly needs?: readonly PlannedStep['needs'][number][]
  readonly waitsFor?: readonly string[]
  /** The safety figure that the step uses. */
  readonly rests?: SafetyFigure
  readonly cautions?: readonly WorkCautionName[]
  readonly comesFrom?: WheelPosition
}

/**
 * Fills a step: one that rests on a figure nobody has verified yet stays shut until a second person confirms it.
 *
 * @source This program's own rule.
 */
export const stepOf = (
  sheet: SpecificationSheet,
  bundleKey: string | null,
  { rests, cautions = [], comesFrom, waitsFor = [], needs = [], ...draft }: StepDraft,
): PlannedStep => {
  const unverified = rests && unverifiedFigures(sheet).includes(rests) ? rests : null
  return {
    ...draft,
    wheel: draft.wheel ?? null,
    round: draft.round ?? null,
    opensTire: draft.code === 'open-tire',
    height: stepHeight(draft.code, draft.wheel ?? null),
    figure: draft.figure ?? null,
    needs: [...needs],
    waitsFor: [...waitsFor, ...(unverified ? [confirmationKey(unverified)] : [])],
    unverified,
    cautions: cautions.map((name) => workCautions[name]),
    bundleKey,
    ...(comesFrom ? { comesFrom } : {}),
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
 * A wheel's torque as the sheet has it, to the digit, with where it was read; `null` where the sheet has none.
 *
 * @units As the maker prints it.
 * @source The sheet; the vehicle maker's figure governs.
 */
export const studTorque = (sheet: SpecificationSheet): StepFigure | null => torqueFigure(sheet, 'full')

/**
 * The figure of one round of tightening: the sheet's, or about half of it for the first round.
 *
 * @units As the maker prints it.
 * @source The sheet; the share of the first round, see `roundTorque`.
 */
export const torqueFigure = (sheet: SpecificationSheet, round: TorqueRound): StepFigure | null => {
  const studs = studsOf(sheet)
  if (studs === null) return null
  const reference = sheet.sources.studTorque?.reference ?? ''
  return round === 'half'
    ? {
        kind: 'torque',
        torque: roundTorque(round, studs.torque),
        source: { from: 'half-of-sheet', reference },
      }
    : { kind: 'torque', torque: studs.torque, source: { from: 'sheet', reference } }
}

/**
 * The label's pressure for a wheel's place; `null` where the sheet has none.
 *
 * @units psi, cold.
 * @source The sheet; the vehicle maker's label governs.
 */
export const placardFigure = (sheet: SpecificationSheet, wheel: WheelPosition): StepFigure | null => {
  const printed = placardOf(sheet)?.[axleOf(wheel)]
  return printed
    ? {
        kind: 'placard',
        psi: printed.psi,
        source: { from: 'sheet', reference: sheet.sources.placard?.reference ?? '' },
      }
    : null
}

/**
 * The frequency that the vehicle listens to; `null` where the sheet has no sensor or nobody named a source.
 *
 * @units MHz
 * @source The sheet; the vehicle maker's figure governs.
 */
export const frequencyFigure = (sheet: SpecificationSheet): StepFigure | null => {
  const sensor = sensorOf(sheet)
  return sensor && sheet.sources.frequency
    ? {
        kind: 'frequency',
        megahertz: sensor.frequencyMHz,
        source: { from: 'sheet', reference: sheet.sources.frequency.reference },
      }
    : null
}
