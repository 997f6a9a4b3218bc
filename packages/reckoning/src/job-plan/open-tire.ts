import type { SpecificationSheet } from '../sheet.ts'
import type { StepFigure } from '../step.ts'
import type { WheelPosition } from '../wheels.ts'
import type { StepDraft } from './step-of.ts'

/**
 * A wheel comes off its hub.
 *
 * @limits The vehicle maker's lift points and instructions govern.
 * @source Common practice, no source.
 */
export const takeWheelOff = (wheel: WheelPosition, after: readonly string[]): StepDraft => ({
  stepKey: `${wheel}.wheel.off`,
  code: 'take-wheel-off',
  values: {},
  wheel,
  closedBy: 'wheel.removed',
  needs: ['value'],
  waitsFor: after,
  caution: 'lift',
})

/**
 * The tire of a wheel in hand is opened, up to the look inside.
 *
 * @limits The machine maker's instructions govern.
 * @source Common practice, no source.
 */
export const openTire = (wheel: WheelPosition, after: readonly string[]): StepDraft[] => [
  {
    stepKey: `${wheel}.tire.open`,
    code: 'open-tire',
    values: {},
    wheel,
    closedBy: 'step.closed',
    waitsFor: after,
    caution: 'open',
  },
  {
    stepKey: `${wheel}.tire.inside`,
    code: 'look-inside',
    values: {},
    wheel,
    closedBy: 'tire.inspected',
    needs: ['value', 'photo'],
    waitsFor: [`${wheel}.tire.open`],
  },
]

/**
 * The tire goes back on the rim and holds air; ends with balancing. `keepsStem`: its parts were not authorized.
 *
 * @units Core torque as the sensor maker's sheet prints it; at most 40 psi to seat a bead.
 * @limits The sensor maker's and the tire maker's figures govern.
 * @source Common practice, no source; the torque: the sheet.
 */
export const closeTire = (
  sheet: SpecificationSheet,
  wheel: WheelPosition,
  after: readonly string[],
  keepsStem: boolean,
): StepDraft[] => [
  {
    stepKey: `${wheel}.tire.seat`,
    code: 'seat-tire',
    values: { keepsStem },
    wheel,
    closedBy: 'step.closed',
    waitsFor: after,
    caution: 'seat',
  },
  {
    stepKey: `${wheel}.tire.core`,
    code: 'torque-core',
    values: {},
    wheel,
    closedBy: 'step.closed',
    figure: coreFigure(sheet),
    needs: ['value'],
    waitsFor: [`${wheel}.tire.seat`],
    caution: 'stem',
  },
  {
    stepKey: `${wheel}.tire.leak`,
    code: 'check-leaks',
    values: {},
    wheel,
    closedBy: 'leak.checked',
    needs: ['value'],
    waitsFor: [`${wheel}.tire.core`],
  },
  {
    stepKey: `${wheel}.tire.balance`,
    code: 'balance-wheel',
    values: {},
    wheel,
    closedBy: 'step.closed',
    waitsFor: [`${wheel}.tire.leak`],
  },
]

const coreFigure = ({ sensor }: SpecificationSheet): StepFigure | null =>
  sensor ? { kind: 'torque', torque: sensor.coreTorque, source: { from: 'valve-core' } } : null
