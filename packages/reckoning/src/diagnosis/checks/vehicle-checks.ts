import { Casing, LightBehavior } from '../../evidence/evidence-schema.ts'
import { fromKilopascals, psi } from '../../evidence/si.ts'
import { LoadClass } from '../../sheet.ts'
import { axleOf } from '../../wheels.ts'
import type { Facts } from '../facts/facts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { each, type FieldCheck } from './field-check.ts'

const isLightTruck = ({ loadClass }: WheelFacts): boolean => loadClass?.startsWith('LT-') === true
const sensing = (facts: Facts): boolean => facts.sensing
const mayHaveSpare = (facts: Facts): boolean => facts.spare !== null

/** What can be found out about the light and the vehicle as a whole. */
export const vehicleChecks: readonly FieldCheck[] = [
  {
    field: 'light.lampCheck',
    seconds: 15,
    suppositions: () => each('light.lampCheck', ['lights', 'dark']),
  },
  {
    field: 'light.behavior',
    seconds: 120,
    suppositions: () => each('light.behavior', LightBehavior.options),
  },
  {
    field: 'light.reported',
    seconds: 20,
    suppositions: () => [],
  },
  {
    field: 'vehicle.system',
    seconds: 60,
    suppositions: () => each('vehicle.system', ['direct', 'indirect', 'none']),
  },
  {
    field: 'vehicle.sensorFrequencyMHz',
    seconds: 60,
    applies: sensing,
    suppositions: () => each('vehicle.sensorFrequencyMHz', [315, 433.92]),
  },
  {
    field: 'vehicle.pressureDisplay',
    seconds: 20,
    applies: sensing,
    suppositions: () => each('vehicle.pressureDisplay', [false, true]),
  },
  {
    field: 'vehicle.spare',
    seconds: 20,
    // Where a spare was looked at, there is one.
    suppositions: ({ evidence }) =>
      each('vehicle.spare', [...(evidence.wheels?.SP ? [] : ['none']), 'temporary', 'full-size']),
  },
  {
    field: 'vehicle.spareMonitored',
    seconds: 60,
    applies: (facts) => facts.sensing && mayHaveSpare(facts),
    suppositions: () => each('vehicle.spareMonitored', [false, true]),
  },
  {
    field: 'vehicle.sensorMounting',
    seconds: 60,
    applies: (facts) => facts.monitored.some((wheel) => wheel.given.valve === 'plain'),
    suppositions: () => each('vehicle.sensorMounting', ['valve', 'band']),
  },
  ...(['front', 'rear'] as const).map((axle): FieldCheck => {
    const other = axle === 'front' ? 'rear' : 'front'
    return {
      field: `vehicle.placard.${axle}`,
      seconds: 30,
      suppositions: (facts) => {
        const known = facts.evidence.vehicle?.placard?.[other]
        const figures =
          typeof known === 'number' ? [known] : [32, 35, 42].map((one) => entered(facts, psi(one)))
        return figures.map((figure) => ({
          [`vehicle.placard.${axle}`]: figure,
          [`vehicle.placard.${other}`]: known ?? figure,
          'vehicle.placard.verified': true,
        }))
      },
    }
  }),
  {
    field: 'vehicle.placard.spare',
    seconds: 30,
    applies: mayHaveSpare,
    suppositions: (facts) =>
      each(
        'vehicle.placard.spare',
        [35, 60].map((one) => entered(facts, psi(one))),
      ),
  },
  {
    field: 'vehicle.placard.verified',
    seconds: 30,
    suppositions: () => each('vehicle.placard.verified', [true, false]),
  },
  ...(['front', 'rear', 'spare'] as const).flatMap((axle): FieldCheck[] => [
    {
      field: `vehicle.warnAt.${axle}`,
      seconds: 120,
      applies: axle === 'spare' ? mayHaveSpare : () => true,
      suppositions: (facts) => {
        const label = facts.evidence.vehicle?.placard?.[axle]
        return typeof label === 'number' ? each(`vehicle.warnAt.${axle}`, [0.75 * label, 0.9 * label]) : []
      },
    },
    {
      field: `vehicle.loadClass.${axle}`,
      seconds: 20,
      applies: axle === 'spare' ? mayHaveSpare : () => true,
      suppositions: () => each(`vehicle.loadClass.${axle}`, LoadClass.options),
    },
    {
      field: `vehicle.casing.${axle}`,
      seconds: 20,
      applies: (facts) =>
        facts.wheels.some((wheel) => axleOf(wheel.position) === axle && isLightTruck(wheel)),
      suppositions: () => each(`vehicle.casing.${axle}`, Casing.options),
    },
  ]),
  ...(['front', 'rear'] as const).map(
    (axle): FieldCheck => ({
      field: `vehicle.sidewallMaximum.${axle}`,
      seconds: 20,
      suppositions: (facts) =>
        each(
          `vehicle.sidewallMaximum.${axle}`,
          [44, 51, 80].map((one) => entered(facts, psi(one))),
        ),
    }),
  ),
]

const entered = (facts: Facts, kilopascals: number): number =>
  Number(fromKilopascals(kilopascals, facts.evidence.units.pressure).toFixed(3))
