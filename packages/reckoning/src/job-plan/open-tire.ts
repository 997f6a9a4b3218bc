import type { SpecificationSheet } from '../sheet.ts'
import type { StepFigure } from '../step.ts'
import { stemTorqueDoubts } from '../torque/plausible-torque.ts'
import type { WheelPosition } from '../wheels.ts'
import type { StepWords } from './step-of.ts'

/**
 * A wheel comes off its hub.
 *
 * @limits The vehicle maker's lift points and instructions govern.
 * @source Common practice, no source.
 */
export const takeWheelOff = (wheel: WheelPosition, after: readonly string[]): StepWords => ({
  stepKey: `${wheel}.wheel.off`,
  code: 'take-wheel-off',
  wheel,
  does: 'Take the wheel off',
  how: `Mark the tire ${wheel}. Note a seized or over-tight fastener or a damaged stud.`,
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
export const openTire = (wheel: WheelPosition, after: readonly string[]): StepWords[] => [
  {
    stepKey: `${wheel}.tire.open`,
    code: 'open-tire',
    wheel,
    does: 'Let the air off, break the bead',
    how: 'Cap and core out first, your face clear of the stem, until no air comes. Keep the shovel and the tool head away from the sensor; the machine maker’s positions govern.',
    closedBy: 'step.closed',
    waitsFor: after,
    caution: 'open',
  },
  {
    stepKey: `${wheel}.tire.inside`,
    code: 'look-inside',
    wheel,
    does: 'Look inside the tire',
    how: 'Look for wear of the liner, dust from running low, earlier repairs, foreign bodies; photo. An old sensor is renewed most cheaply now: if it is, tell the desk before the tire goes back on.',
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
): StepWords[] => [
  {
    stepKey: `${wheel}.tire.seat`,
    code: 'seat-tire',
    wheel,
    does: 'Mount the tire, seat the beads',
    how: [
      'Lubricate. Arrow and outer side as the tire is marked. Keep the last part to go over the rim away from the sensor.',
      ...(keepsStem
        ? ['The stem parts work once and are not authorized: without the customer’s written No, stop.']
        : []),
    ].join(' '),
    closedBy: 'step.closed',
    waitsFor: after,
    caution: 'seat',
  },
  {
    stepKey: `${wheel}.tire.core`,
    code: 'torque-core',
    wheel,
    does: 'Torque the new valve core',
    how: coreWords(sheet),
    closedBy: 'step.closed',
    figure: coreFigure(sheet),
    needs: ['value'],
    waitsFor: [`${wheel}.tire.seat`],
    caution: 'stem',
  },
  {
    stepKey: `${wheel}.tire.leak`,
    code: 'check-leaks',
    wheel,
    does: 'Check stem, core and beads for leaks',
    how: 'Soapy water, two minutes. Blow the core dry afterwards, then the cap with its seal on; never one of plain metal on an aluminum stem.',
    closedBy: 'leak.checked',
    needs: ['value'],
    waitsFor: [`${wheel}.tire.core`],
  },
  {
    stepKey: `${wheel}.tire.balance`,
    code: 'balance-wheel',
    wheel,
    does: 'Balance the wheel',
    how: 'Record what imbalance is left, if the machine shows it.',
    closedBy: 'step.closed',
    waitsFor: [`${wheel}.tire.leak`],
  },
]

const coreFigure = ({ sensor }: SpecificationSheet): StepFigure | null =>
  sensor ? { kind: 'torque', torque: sensor.coreTorque, source: "valve core, sensor maker's sheet" } : null

const coreWords = ({ sensor }: SpecificationSheet): string =>
  [
    'With a core driver; nickel-plated in an aluminum stem. Record the torque.',
    ...(sensor
      ? stemTorqueDoubts('valve core', sensor.coreTorque)
      : ["The sheet has no figure: the valve maker's governs."]),
  ].join(' ')
