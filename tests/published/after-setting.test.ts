/**
 * How near its target a tire is left, and a sensor to the gauge; our convention, after common practice without a source. A shop may set its own.
 */
import { isAxleAlike, judgeAsLeft, sensorAgrees } from '@bayledger/reckoning/pressure/after-set'
import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { expect, it } from 'vitest'
import { ownConvention, published } from './published.ts'

const psi = (value: number) => inKilopascals({ value, unit: 'psi' })
const atAMile = airPressureAtAltitude(metersFromFeet(5_280))

published({ document: 'How a tire is left after setting', certainty: ownConvention }, () => {
  it.each([
    [35, 'on-target'],
    [36.5, 'on-target'],
    [34.9, 'under'],
    [36.6, 'over'],
  ])('for a target of 35.0 psi, %d psi is %s', (left, verdict) => {
    expect(judgeAsLeft(psi(35), psi(left))).toBe(verdict)
  })

  it.each([
    [35, 36, true],
    [36, 35, true],
    [35, 36.1, false],
    [36.1, 35, false],
  ])('an axle left at %d and %d psi is alike: %s', (left, right, alike) => {
    expect(isAxleAlike(psi(left), psi(right))).toBe(alike)
  })

  it.each([
    [35, 'local-air', true],
    [33, 'local-air', true],
    [37, 'local-air', true],
    [32.8, 'local-air', false],
    [32.4, 'sea-level', true],
    [30.4, 'sea-level', true],
    [35, 'sea-level', false],
  ] as const)(
    'at 5,280 ft, gauge 35 psi, a sensor that shows %d and refers to the %s agrees: %s',
    (sensor, refersTo, agrees) => {
      expect(sensorAgrees({ gauge: psi(35), sensor: psi(sensor), refersTo, air: atAMile })).toBe(agrees)
    },
  )
})
