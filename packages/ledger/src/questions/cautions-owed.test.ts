import { describe, expect, it } from 'vitest'
import { cautionsOwed } from './cautions-owed.ts'

const one = { bundleKey: 'sensor.RR', alternativeTo: null, cautions: [{ number: 'CT-01' }] }
const four = { bundleKey: 'sensor.set-of-four', alternativeTo: 'sensor.RR', cautions: [{ number: 'CT-05' }] }

describe('the cautions of a No', () => {
  it('are none for the one sensor where the set of four is taken', () => {
    expect(cautionsOwed(one, [one, four], new Set(['sensor.set-of-four']))).toEqual([])
  })

  it('are its own where nothing replaces it, and for the set where only the one is taken', () => {
    expect(cautionsOwed(one, [one, four], new Set())).toEqual([{ number: 'CT-01' }])
    expect(cautionsOwed(four, [one, four], new Set(['sensor.RR']))).toEqual([{ number: 'CT-05' }])
  })
})
