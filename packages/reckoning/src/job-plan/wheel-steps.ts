import type { SpecificationSheet } from '../sheet.ts'
import { stepKeys } from '../step.ts'
import { stemTorqueDoubts, torqueWords } from '../torque/plausible-torque.ts'
import { tighteningOrder } from '../torque/star-sequence.ts'
import type { WheelPosition } from '../wheels.ts'
import { frequencyFigure, type StepWords, studTorque } from './step-of.ts'

/** A wheel comes off and its tire is opened: up to the look inside. */
export const openTire = (wheel: WheelPosition, after: readonly string[]): StepWords[] => [
  {
    stepKey: `${wheel}.wheel.off`,
    wheel,
    does: 'Take the wheel off',
    how: `Mark the tire ${wheel}. Note a seized or over-tight fastener or a damaged stud.`,
    closedBy: 'wheel.removed',
    needs: ['value'],
    waitsFor: after,
    caution: 'lift',
  },
  {
    stepKey: `${wheel}.tire.open`,
    wheel,
    does: 'Let the air off, break the bead',
    how: 'Core out first. Keep the shovel and the tool head away from the sensor; the machine maker’s positions govern.',
    closedBy: 'step.closed',
    waitsFor: [`${wheel}.wheel.off`],
    caution: 'open',
  },
  {
    stepKey: `${wheel}.tire.inside`,
    wheel,
    does: 'Look inside the tire',
    how: 'Look for wear of the liner, dust from running low, earlier repairs, foreign bodies.',
    closedBy: 'tire.inspected',
    needs: ['value'],
    waitsFor: [`${wheel}.tire.open`],
  },
]

/** The tire goes back on the rim and holds air; ends with balancing. */
export const closeTire = (
  sheet: SpecificationSheet,
  wheel: WheelPosition,
  after: readonly string[],
): StepWords[] => [
  {
    stepKey: `${wheel}.tire.seat`,
    wheel,
    does: 'Mount the tire, seat the beads',
    how: ['Lubricate. Keep the last part to go over the rim away from the sensor.', coreWords(sheet)].join(
      ' ',
    ),
    closedBy: 'step.closed',
    waitsFor: after,
    caution: 'seat',
  },
  {
    stepKey: `${wheel}.tire.leak`,
    wheel,
    does: 'Check stem, core and beads for leaks',
    how: 'Soapy water, two minutes. Blow the core dry afterwards.',
    closedBy: 'leak.checked',
    needs: ['value'],
    waitsFor: [`${wheel}.tire.seat`],
  },
  {
    stepKey: `${wheel}.tire.balance`,
    wheel,
    does: 'Balance the wheel',
    how: 'Record what imbalance is left, if the machine shows it.',
    closedBy: 'step.closed',
    waitsFor: [`${wheel}.tire.leak`],
  },
]

const coreWords = ({ sensor }: SpecificationSheet): string =>
  sensor
    ? [
        `Then the new core in, to ${torqueWords(sensor.coreTorque)} with a core driver.`,
        ...stemTorqueDoubts('valve core', sensor.coreTorque),
      ].join(' ')
    : 'Then the new core in, with a core driver.'

/**
 * The wheel goes on and is tightened: by hand, then half the figure, the figure, and the figure again until none
 * moves; then a second person goes round. Rounds and star are common practice (no source); the figure and a
 * published sequence are the vehicle maker's.
 */
export const tightenWheel = (
  sheet: SpecificationSheet,
  wheel: WheelPosition,
  after: readonly string[],
): StepWords[] => {
  const { fastener, handTurns } = sheet.studs
  const order = tighteningOrder(sheet.studs).join(' · ')
  const torque = { wheel, figure: studTorque(sheet), rests: 'studTorque', caution: 'torque' } as const
  const [half, full, again] = (['half', 'full', 'again'] as const).map((round) =>
    stepKeys.torqueRound(wheel, round),
  )
  return [
    {
      stepKey: `${wheel}.wheel.on`,
      wheel,
      does: `Wheel on, every ${fastener} by hand`,
      how: `Hub face and seats clean, the right seat, dry threads. At least ${handTurns} turns by hand each; any resistance: stop. Snug in the order ${order} with the wheel still off the ground.`,
      closedBy: 'wheel.mounted',
      needs: ['value'],
      waitsFor: after,
    },
    {
      ...torque,
      stepKey: half ?? '',
      does: 'Round at half the figure',
      how: `Lower until the tire just holds. About half of the figure shown, in the order ${order}.`,
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: [`${wheel}.wheel.on`],
    },
    {
      ...torque,
      stepKey: full ?? '',
      does: 'Round at the figure',
      how: `Pull smoothly, one click, stop. In the order ${order}. The locking ${fastener} gets the same figure with its key.`,
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: half ? [half] : [],
    },
    {
      ...torque,
      stepKey: again ?? '',
      does: 'Once more round at the figure',
      how: `Every ${fastener} clicks without turning. One that turns sends the wheel back to the round before.`,
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: full ? [full] : [],
    },
    {
      ...torque,
      stepKey: stepKeys.torqueCheck(wheel),
      does: 'Second person checks the torque',
      how: `Somebody else, with a wrench in calibration, goes round at the figure in the order ${order}.`,
      closedBy: 'torque.checked',
      needs: ['value', 'second-person'],
      waitsFor: again ? [again] : [],
    },
  ]
}

/** A new sensor: matched and programmed before the wheel comes off, fitted in the open tire. */
export const fitSensor = (
  sheet: SpecificationSheet,
  wheel: WheelPosition,
  valve: 'snap-in' | 'clamp-in',
  identity: 'copy' | 'new',
): { readonly before: StepWords[]; readonly inside: StepWords[] } => {
  const sensor = sheet.sensor
  const torque = valve === 'clamp-in' ? sensor?.stemNutTorque : sensor?.stemScrewTorque
  const fastened = valve === 'clamp-in' ? 'stem nut' : 'stem screw'
  const figure = frequencyFigure(sheet)
  return {
    before: [
      {
        stepKey: `${wheel}.sensor.match`,
        wheel,
        does: 'Draw the sensor, match it by scan',
        how: `Frequency and stem must be the sheet's: ${sensor?.frequencyMHz ?? 'not on the sheet'} MHz, ${valve}. "Something close" does not fit.`,
        closedBy: 'part.drawn',
        figure,
        needs: ['value'],
        rests: 'frequency',
      },
      {
        stepKey: `${wheel}.sensor.program`,
        wheel,
        does: identity === 'copy' ? "Program with the old sensor's ID" : 'Program with a new ID',
        how: 'Before it is mounted, five feet or more from every other sensor. Then read it back in your hand.',
        closedBy: 'sensor.programmed',
        figure,
        needs: ['value'],
        waitsFor: [`${wheel}.sensor.match`],
        rests: 'frequency',
      },
    ],
    inside: [
      {
        stepKey: `${wheel}.sensor.fit`,
        wheel,
        does: 'Old sensor out, new one in',
        how:
          valve === 'clamp-in'
            ? [
                'Hole clean and free of burrs. New grommet, washer, nut, core and cap. Stem square, nothing on the threads; hold the body still and torque the nut in one pull.',
                ...(torque ? stemTorqueDoubts('stem nut', torque) : []),
              ].join(' ')
            : 'Cut the old stem outward, never use it again. New stem and screw; lubricate and pull straight until the shoulder seats. The sensor lies in the drop center.',
        closedBy: 'sensor.fitted',
        figure: torque ? { kind: 'torque', torque, source: `${fastened}, sensor maker's sheet` } : null,
        needs: ['value'],
        waitsFor: [`${wheel}.sensor.program`, `${wheel}.tire.inside`],
        caution: 'stem',
      },
    ],
  }
}

/** A new plain stem or the service kit of a sensor that stays. */
export const serviceStem = (wheel: WheelPosition): StepWords[] => [
  {
    stepKey: `${wheel}.stem.renew`,
    wheel,
    does: 'Renew the stem parts',
    how: 'Grommet, washer, nut, core and cap, or a new rubber stem: each works once. A nickel-plated core in an aluminum stem.',
    closedBy: 'step.closed',
    needs: ['value'],
    waitsFor: [`${wheel}.tire.inside`],
    caution: 'stem',
  },
]

/** Where the air goes: stem and core, tread, beads, rim, sidewall, in that order. */
export const findLeak = (wheel: WheelPosition): StepWords[] => [
  {
    stepKey: `${wheel}.leak.find`,
    wheel,
    does: 'Find where the air goes',
    how: 'Stem and core, tread, beads, rim, sidewall, in that order; spray or dunk. Record the place. Filling alone is not a repair.',
    closedBy: 'step.closed',
    needs: ['value'],
  },
]
