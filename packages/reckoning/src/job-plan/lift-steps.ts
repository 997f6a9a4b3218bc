import type { SpecificationSheet } from '../sheet.ts'
import type { RoadPosition } from '../wheels.ts'
import type { JobWheels } from './job-wheels.ts'
import { rotationTiresKey } from './other-wheels.ts'
import { liftKeys, torqueRoundKey, wheelOnKey } from './step-keys.ts'
import type { StepDraft } from './step-of.ts'

/**
 * The vehicle goes up once and comes down once, in two stages: until the tires just hold, for the torque rounds, and
 * then fully. None of these steps where no wheel comes off.
 *
 * @limits The vehicle maker's lift points and instructions govern.
 * @source Common practice, no source.
 */
export const liftSteps = (sheet: SpecificationSheet, job: JobWheels): StepDraft[] =>
  job.cameOff.length === 0
    ? []
    : [
        {
          stepKey: liftKeys.up,
          code: 'lift-vehicle',
          values: { liftNotes: sheet.liftNotes },
          closedBy: 'step.closed',
          waitsFor: job.rotation ? [rotationTiresKey] : [],
          cautions: ['lift'],
        },
        {
          stepKey: liftKeys.touching,
          code: 'lower-to-touching',
          values: {},
          closedBy: 'step.closed',
          waitsFor: job.cameOff.map(wheelOnKey),
          cautions: ['lower'],
        },
        {
          stepKey: liftKeys.down,
          code: 'lower-fully',
          values: {},
          closedBy: 'step.closed',
          waitsFor: job.cameOff.map(lastRoundKey),
          cautions: ['lower'],
        },
      ]

const lastRoundKey = (wheel: RoadPosition): string => torqueRoundKey(wheel, 'again')

/**
 * What everything waits for that is done on the floor after the lift.
 *
 * @source This program's own rule.
 */
export const afterLift = ({ cameOff }: JobWheels): string[] => (cameOff.length === 0 ? [] : [liftKeys.down])
