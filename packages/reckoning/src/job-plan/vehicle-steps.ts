import { relearnOrder } from '../relearn/relearn-template.ts'
import { cameFrom, type Moves, movedPlaces } from '../rotation/moves.ts'
import type { SafetyFigure, SheetRelearn, SpecificationSheet } from '../sheet.ts'
import type { StepFigure } from '../step.ts'
import { roadPositions, type WheelPosition } from '../wheels.ts'
import { confirmationKey, placardFigure, type StepDraft } from './step-of.ts'

/**
 * A figure that nobody has verified is confirmed from its source by a second person before a step may use it.
 *
 * @limits The vehicle maker's figure governs; a figure inside the usual band is still not verified.
 * @source This program's own rule.
 */
export const confirmFigure = (sheet: SpecificationSheet, figure: SafetyFigure): StepDraft => ({
  stepKey: confirmationKey(figure),
  ...confirmed(sheet, figure),
  closedBy: 'figure.confirmed',
  needs: ['value', 'second-person'],
})

const confirmed = ({ studs }: SpecificationSheet, figure: SafetyFigure) => {
  switch (figure) {
    case 'placard':
      return { code: 'confirm-placard', values: {} } as const
    case 'frequency':
      return { code: 'confirm-frequency', values: {} } as const
    case 'studTorque':
      return {
        code: 'confirm-stud-torque',
        values: { torque: studs.torque, thread: studs.thread },
      } as const
  }
}

/**
 * The wheels whose pressure the placard names.
 *
 * @source The sheet.
 */
export const placardWheels = (sheet: SpecificationSheet): WheelPosition[] =>
  sheet.spare !== 'none' && sheet.placard.spare ? [...roadPositions, 'SP'] : [...roadPositions]

/**
 * The step by which a wheel's pressure is set.
 *
 * @source This program's own rule.
 */
export const pressureKey = (wheel: WheelPosition): string => `${wheel}.pressure.set`

/**
 * Set every tire to the day's target: the label's cold figure, carried to the tire's own temperature.
 *
 * @limits The vehicle maker's label governs.
 * @source Common practice, no source; the target itself, see `setTarget`.
 */
export const setPressures = (
  sheet: SpecificationSheet,
  after: (wheel: WheelPosition) => readonly string[],
): StepDraft[] =>
  placardWheels(sheet).map((wheel) => ({
    stepKey: pressureKey(wheel),
    code: 'set-pressure',
    values: {},
    wheel,
    closedBy: 'pressure.set',
    figure: placardFigure(sheet, wheel),
    needs: ['value'],
    waitsFor: after(wheel),
    rests: 'placard',
    caution: 'pressure',
  }))

export const relearnKey = 'vehicle.relearn.done'

/**
 * The relearn or reset that the sheet describes, once the pressures are right and, if it is driven, the wheels safe.
 *
 * @limits The vehicle maker's procedure governs; where the sheet has none, none is guessed.
 * @source Common practice, no source; the procedure: the sheet.
 */
export const relearnStep = (
  sheet: SpecificationSheet,
  pressures: readonly string[],
  checks: readonly string[],
): StepDraft[] => {
  const { relearn } = sheet
  const mayBeDriven = relearn === null || relearn.method === 'automatic'
  return [
    {
      stepKey: relearnKey,
      code: 'relearn',
      values: {
        method: relearn?.method ?? (sheet.system === 'indirect' ? 'reset' : 'stationary'),
        order: [...relearnOrder(sheet)],
      },
      procedure: relearn,
      closedBy: 'relearn.done',
      figure: relearn ? relearnFigure(relearn, sheet.name) : null,
      needs: ['value'],
      waitsFor: [...pressures, ...(mayBeDriven ? checks : [])],
      ...(relearn?.method === 'automatic' ? { caution: 'road' } : {}),
    },
  ]
}

const relearnFigure = (
  { driveMinutes, timeLimitMinutes }: SheetRelearn,
  reference: string,
): StepFigure | null => {
  const source = { from: 'sheet', reference } as const
  if (driveMinutes) return { kind: 'minutes', minutes: driveMinutes, of: 'driving', source }
  return timeLimitMinutes ? { kind: 'minutes', minutes: timeLimitMinutes, of: 'time-limit', source } : null
}

/** Minutes of driving in which a warning would come: 49 CFR 571.138 S4.2 and S4.4 allow the system 20. */
const proofMinutes = 20

/**
 * The closing check and the proof that the light is out and stays out; `moves`: wheels that changed places.
 *
 * @units Minutes: the 20 that a system may take to warn; mph: the band in which they count.
 * @source 49 CFR 571.138 S4.2 and S4.4, from memory. The steps: common practice, no source.
 */
export const proveIt = (
  sheet: SpecificationSheet,
  after: readonly string[],
  checks: readonly string[],
  moves: Moves,
): StepDraft[] => {
  const heard: readonly WheelPosition[] =
    sheet.system !== 'direct' ? [] : sheet.spareMonitored ? [...roadPositions, 'SP'] : roadPositions
  const read = heard.map((wheel) => `${wheel}.closing.read`)
  return [
    ...heard.map(
      (wheel): StepDraft => ({
        stepKey: `${wheel}.closing.read`,
        code: 'read-sensor',
        values: {},
        wheel,
        closedBy: 'wheel.checked',
        needs: ['value'],
        waitsFor: after,
      }),
    ),
    ...(sheet.system === 'direct'
      ? [
          {
            stepKey: 'vehicle.closing.module',
            code: 'compare-stored',
            values: {
              moved: movedPlaces(moves).map((place) => ({ place, from: cameFrom(moves, place) })),
            },
            closedBy: 'module.read',
            needs: ['value'],
            waitsFor: after,
          } as const,
        ]
      : []),
    {
      stepKey: 'vehicle.proof.drive',
      code: 'proof-drive',
      values: {},
      closedBy: 'drive.done',
      figure: {
        kind: 'minutes',
        minutes: proofMinutes,
        of: 'proof-drive',
        source: { from: 'federal-rule' },
      },
      needs: ['value'],
      waitsFor: [...after, ...read, ...checks],
      caution: 'road',
    },
    {
      stepKey: 'vehicle.closing.light',
      code: 'see-light',
      values: {},
      closedBy: 'telltale.observed',
      needs: ['value'],
      waitsFor: ['vehicle.proof.drive'],
    },
    lastLook(['vehicle.closing.light']),
  ]
}

/**
 * A last look for tools and parts under the vehicle or in it.
 *
 * @source Common practice, no source.
 */
export const lastLook = (after: readonly string[]): StepDraft => ({
  stepKey: 'vehicle.last.look',
  code: 'last-look',
  values: {},
  closedBy: 'step.closed',
  waitsFor: after,
})
