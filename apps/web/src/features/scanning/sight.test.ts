import { describe, expect, it } from 'vitest'
import type { ScanTarget } from './scan-target.ts'
import { nextSight, nothingSeen, type Sight } from './sight.ts'

const target: ScanTarget = { wanted: 'sensor-id', listedParts: ['TS-315-C'] }
const seen = (pictures: readonly (readonly string[])[]): Sight =>
  pictures.reduce<Sight>((before, texts) => nextSight(before, texts, target), nothingSeen)

describe('what a camera sees', () => {
  it('counts once two pictures in a row agree', () => {
    expect(seen([['1A2B3C12']])).toMatchObject({ value: '1A2B3C12', isSure: false })
    expect(seen([['1A2B3C12'], ['1A2B3C12']])).toMatchObject({ value: '1A2B3C12', isSure: true })
    expect(seen([['1A2B3C12'], ['1A2B3C13']])).toMatchObject({ value: '1A2B3C13', isSure: false })
    expect(seen([['1A2B3C12'], [], ['1A2B3C12']])).toMatchObject({ isSure: false })
  })

  it('takes what is wanted of a label with several barcodes', () => {
    const label = ['TS-315-C', '1A2B3C12', '6291041500213']
    expect(seen([label, label])).toMatchObject({ value: '1A2B3C12', isSure: true })
  })

  it('tells what is not wanted, and goes on telling while nothing else is in view', () => {
    const says = 'This is a VIN. Scan the label of the sensor.'
    expect(seen([['I1ZZ12AB4XR0000004']])).toEqual({ value: null, says, isSure: false })
    expect(seen([['I1ZZ12AB4XR0000004'], []]).says).toBe(says)
    expect(seen([['I1ZZ12AB4XR0000004'], ['1A2B3C12']]).says).toBeNull()
  })
})
