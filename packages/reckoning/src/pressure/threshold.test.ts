import { expect, it } from 'vitest'
import { gaugeKilopascals } from '../units/measured.ts'
import { above, atOrAbove, atOrBelow, below } from './threshold.ts'

const at = gaugeKilopascals(165.474)

it('to within 0.0345 kPa of a threshold a pressure is on it, and that far off too', () => {
  const none = gaugeKilopascals(0)
  expect(atOrBelow(gaugeKilopascals(0.0345), none)).toBe(true)
  expect(atOrAbove(gaugeKilopascals(-0.0345), none)).toBe(true)
})

it.each([
  ['well under', -1, { atOrBelow: true, atOrAbove: false, below: true, above: false }],
  ['just under the tolerance', -0.035, { atOrBelow: true, atOrAbove: false, below: true, above: false }],
  ['under, within 0.005 psi', -0.034, { atOrBelow: true, atOrAbove: true, below: false, above: false }],
  ['on it', 0, { atOrBelow: true, atOrAbove: true, below: false, above: false }],
  ['over, within 0.005 psi', 0.034, { atOrBelow: true, atOrAbove: true, below: false, above: false }],
  ['just over the tolerance', 0.035, { atOrBelow: false, atOrAbove: true, below: false, above: true }],
  ['well over', 1, { atOrBelow: false, atOrAbove: true, below: false, above: true }],
])('a pressure %s (%d kPa)', (_, off, expected) => {
  const pressure = gaugeKilopascals(at + off)
  expect({
    atOrBelow: atOrBelow(pressure, at),
    atOrAbove: atOrAbove(pressure, at),
    below: below(pressure, at),
    above: above(pressure, at),
  }).toEqual(expected)
})
