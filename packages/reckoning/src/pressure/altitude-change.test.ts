import { expect, it } from 'vitest'
import { absoluteKilopascals } from '../units/measured.ts'
import { airAtSeaLevel } from './air-pressure.ts'
import { lostToAltitude, shownTooLowBySeaLevelSensor } from './altitude-change.ts'

it('a tire reads less where the air is denser, and more where it is thinner', () => {
  const mountain = absoluteKilopascals(78)
  expect(lostToAltitude(mountain, airAtSeaLevel)).toBeCloseTo(23.325, 10)
  expect(lostToAltitude(airAtSeaLevel, mountain)).toBeCloseTo(-23.325, 10)
})

it('a sensor that refers to the sea is right at the sea and low above it', () => {
  expect(shownTooLowBySeaLevelSensor(airAtSeaLevel)).toBe(0)
  expect(shownTooLowBySeaLevelSensor(absoluteKilopascals(90))).toBeCloseTo(11.325, 10)
})
