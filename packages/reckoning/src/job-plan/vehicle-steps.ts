import { placardOf, type SafetyFigure, type SpecificationSheet, studsOf } from '../sheet.ts'
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

const confirmed = (sheet: SpecificationSheet, figure: SafetyFigure) => {
  switch (figure) {
    case 'placard':
      return { code: 'confirm-placard', values: {} } as const
    case 'frequency':
      return { code: 'confirm-frequency', values: {} } as const
    case 'studTorque': {
      const studs = studsOf(sheet)
      return studs
        ? ({
            code: 'confirm-stud-torque',
            values: { torque: studs.torque, thread: studs.thread },
          } as const)
        : ({ code: 'confirm-stud-torque', values: { torque: 'missing' } } as const)
    }
  }
}

/**
 * The wheels whose pressure the placard names.
 *
 * @source The sheet.
 */
export const placardWheels = (sheet: SpecificationSheet): WheelPosition[] =>
  sheet.spare !== 'none' && placardOf(sheet)?.spare ? [...roadPositions, 'SP'] : [...roadPositions]

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
    cautions: ['pressure'],
  }))

export const lastLookKey = 'vehicle.last.look'

/**
 * A last look before the road: caps, tools, the locking key, and nothing under the vehicle or on it.
 *
 * @source Common practice, no source.
 */
export const lastLook = (after: readonly string[]): StepDraft => ({
  stepKey: lastLookKey,
  code: 'last-look',
  values: {},
  closedBy: 'step.closed',
  waitsFor: after,
})
