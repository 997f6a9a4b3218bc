/**
 * Source: NHTSA interpretation nht76-1.47, read (nhtsa.gov/node/71386): on a multipurpose vehicle, truck, bus or trailer
 * a passenger tire's load rating is divided by 1.10 (Standard 120 S5.1.2).
 */
import { carriedOn } from '@bayledger/reckoning/tire/load-check'
import { loadOfIndex } from '@bayledger/reckoning/tire/load-index'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const tireOf = (index: number, passenger: boolean) =>
  ({
    passenger,
    loadIndex: index,
    speed: 'T',
    tableLoad: { value: loadOfIndex(index) ?? Number.NaN, unit: 'kg' },
  }) as const

published(
  { document: 'NHTSA interpretation', section: 'nht76-1.47', edition: '1976', certainty: 'read' },
  () => {
    it.each([
      [91, 559.09],
      [98, 681.82],
      [104, 818.18],
      [113, 1045.45],
    ])('a passenger tire of load index %i counts on a truck as %d kg', (index, load) => {
      expect(carriedOn('truck-or-multipurpose', tireOf(index, true))).toBeCloseTo(load, 2)
    })

    it.each([91, 104])('a passenger tire of load index %i counts on a car whole', (index) => {
      expect(carriedOn('car', tireOf(index, true))).toBe(loadOfIndex(index))
    })

    it.each([104, 121])('a light-truck tire of load index %i counts on a truck whole', (index) => {
      expect(carriedOn('truck-or-multipurpose', tireOf(index, false))).toBe(loadOfIndex(index))
    })
  },
)
