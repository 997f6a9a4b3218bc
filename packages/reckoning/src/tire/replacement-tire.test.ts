import { describe, expect, it } from 'vitest'
import { classRefusal } from './load-class-change.ts'
import { readTireSize } from './read-tire-size.ts'
import { type ReplacementOf, replacementVerdict } from './replacement-tire.ts'

const same: ReplacementOf = {
  vehicle: 'car',
  sheet: { size: '235/60R18 103H', loadClass: 'SL' },
  fitted: '235/60R18 103H',
  newOnLabel: false,
  sidewallMaximum: { value: 44, unit: 'psi' },
  chosenPsi: 33,
  tableLoads: { original: null, fitted: null },
  warnsAtPsi: 24.75,
}
const verdict = (of: Partial<ReplacementOf>) => replacementVerdict({ ...same, ...of })

describe('a tire in the place of the sheet’s', () => {
  it('is what the sheet names with the same size and the same or higher load index and speed symbol', () => {
    expect(verdict({})).toMatchObject({ outcome: 'as-sheet', diameter: { percent: 0 } })
    expect(verdict({ fitted: '235/60R18 107V XL' })).toMatchObject({ outcome: 'as-sheet' })
  })

  it.each([
    ['235/60R18 102H', ['lower-index']],
    ['235/60R18 103T', ['slower-symbol']],
    ['235/60R18 100S', ['slower-symbol', 'lower-index']],
  ])('is refused as %s, with every reason', (fitted, reasons) => {
    expect(verdict({ fitted })).toMatchObject({ outcome: 'refused', load: { outcome: 'refuses', reasons } })
  })

  it('of another size is decided by the load tables, which a person has to read', () => {
    const other = { fitted: '255/55R18 105V' }
    expect(verdict(other)).toMatchObject({ outcome: 'load-check', load: { outcome: 'asks' } })
    const loads = { original: { value: 1_929, unit: 'lb' }, fitted: { value: 1_940, unit: 'lb' } } as const
    expect(verdict({ ...other, tableLoads: loads })).toMatchObject({ load: { outcome: 'passes' } })
    const less = { ...loads, fitted: { value: 1_900, unit: 'lb' } } as const
    expect(verdict({ ...other, tableLoads: less })).toMatchObject({
      outcome: 'refused',
      load: { reasons: ['carries-less'] },
    })
    expect(verdict({ ...other, newOnLabel: true })).toMatchObject({ load: { outcome: 'label-decides' } })
  })

  it('says how much a tire loses before the vehicle warns at the trigger of its own label', () => {
    expect(verdict({})).toMatchObject({ warning: { percent: 25, isMoreThanAQuarter: false } })
    expect(verdict({ chosenPsi: 41 })).toMatchObject({ warning: { isMoreThanAQuarter: true } })
    expect(verdict({ warnsAtPsi: null })).toMatchObject({ warning: null })
  })

  it('is not judged where a size cannot be read or names no load, and that is not taken for right', () => {
    expect(verdict({ fitted: 'big' })).toEqual({ outcome: 'unreadable', which: 'fitted' })
    expect(verdict({ sheet: { size: '?', loadClass: 'SL' } })).toEqual({
      outcome: 'unreadable',
      which: 'sheet',
    })
    expect(verdict({ fitted: '235/60R18' })).toMatchObject({
      outcome: 'load-check',
      load: { outcome: 'asks' },
    })
    expect(verdict({ fitted: '7.50R16LT 112/110N' })).toMatchObject({ diameter: null })
  })
})

describe('the class of load', () => {
  it.each([
    ['LT-E', 'LT245/75R16 120/116S E', null],
    ['LT-E', 'LT245/75R16 116/113S D', 'lower-load-range'],
    ['LT-C', '245/75R16 111T', 'passenger-for-light-truck'],
    ['LT-C', '31x10.5R15LT 109S C', null],
    ['XL', '235/55R19 101H', 'standard-for-extra-load'],
    ['XL', '235/55R19 105V XL', null],
    ['XL', 'HL235/55R19 108V', null],
    ['HL', '275/35R21 103Y XL', 'not-high-load'],
    ['HL', 'HL275/35R21 105Y', null],
    ['C', '185R14C 102/100Q', null],
    ['C', '185/65R14 86H', 'not-commercial'],
    ['SL', '235/60R18 103H', null],
    ['SL', 'LT235/75R15 104S C', null],
  ] as const)('%s by the sheet, %s on the wheel: %s', (sheet, fitted, refusal) => {
    const size = readTireSize(fitted)
    if (!size.ok) throw new RangeError(fitted)
    expect(classRefusal(sheet, size.value)).toBe(refusal)
  })
})
