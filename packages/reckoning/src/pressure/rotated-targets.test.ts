import { expect, it } from 'vitest'
import { kilopascalsIn } from '../units/pressure-units.ts'
import { targetsAfterRotation } from './rotated-targets.ts'

const placard = { front: { psi: 33, kPa: 230 }, rear: { psi: 36, kPa: 250 }, spare: { psi: 60, kPa: 420 } }
const straightBack = { LR: 'LF', RR: 'RF', LF: 'LR', RF: 'RR' } as const

it('every wheel is set to the figure of the place where it is now', () => {
  const reset = targetsAfterRotation(placard, straightBack)
  expect(reset.map(({ position, cameFrom, set }) => [position, cameFrom, set.value])).toEqual([
    ['LF', 'LR', 33],
    ['RF', 'RR', 33],
    ['RR', 'RF', 36],
    ['LR', 'LF', 36],
  ])
  expect(reset.map(({ change }) => Math.round(kilopascalsIn('psi', change)))).toEqual([-3, -3, 3, 3])
})

it('a wheel that crosses its axle keeps its figure', () => {
  const reset = targetsAfterRotation(placard, { LF: 'RF', RF: 'LF' })
  expect(reset.map(({ change }) => change)).toEqual([0, 0])
})

it('a spare that comes onto the road takes the road’s figure', () => {
  const [rightRear] = targetsAfterRotation(placard, { RR: 'SP' })
  expect(rightRear?.set).toEqual({ value: 36, unit: 'psi' })
  expect(kilopascalsIn('psi', rightRear?.change ?? (0 as never))).toBeCloseTo(-24, 9)
})

it('a place whose figure the label does not print is left out', () => {
  expect(targetsAfterRotation({ ...placard, spare: null }, { RR: 'SP', SP: 'RR', LF: 'RF' })).toHaveLength(1)
})
