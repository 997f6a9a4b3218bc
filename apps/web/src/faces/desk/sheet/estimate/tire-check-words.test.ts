import { replacementVerdict } from '@bayledger/reckoning/tire/replacement-tire'
import { tiresApart } from '@bayledger/reckoning/tire/tread-apart'
import { expect, it } from 'vitest'
import { apartWords, verdictWords } from './tire-check-words.ts'

const of = {
  vehicle: 'car',
  sheet: { size: '235/60R18 103H', loadClass: 'XL' },
  newOnLabel: false,
  sidewallMaximum: null,
  chosenPsi: 41,
  tableLoads: { original: null, fitted: null },
  warnsAtPsi: 24,
} as const

it('says every reason, what changes beside the load, and that the label governs', () => {
  expect(verdictWords(replacementVerdict({ ...of, fitted: '225/65R18 101H' }), 'direct')).toEqual([
    'Do not fit it.',
    'The sheet names extra load (XL), and this is a standard load tire.',
    expect.stringContaining('load index is lower'),
    expect.stringMatching(/^Its diameter is 1\.\d % larger/),
    expect.stringContaining('after a loss of 41 %. That is later than the quarter'),
    expect.stringContaining('The vehicle maker’s label governs.'),
  ])
  expect(
    verdictWords(replacementVerdict({ ...of, fitted: '235/60R18 103H XL', chosenPsi: null }), 'direct'),
  ).toEqual([
    'It is the tire that the sheet names, in size, load index and speed symbol.',
    expect.stringContaining('The vehicle maker’s label governs.'),
  ])
})

it('says of a vehicle that compares how its tires roll that it is reset', () => {
  const says = (system: 'direct' | 'indirect') =>
    verdictWords(replacementVerdict({ ...of, fitted: '235/55R19 105H XL' }), system).join(' ')
  expect(says('indirect')).toMatch(/compares how its tires roll\. Set the pressures and reset it/)
  expect(says('direct')).not.toMatch(/reset/)
})

it('says how far 10/32 and 2/32 are apart', () => {
  const at = (value: number) => ({ tread: { value, unit: '1/32 in' } as const, size: null })
  const apart = tiresApart({ LF: at(10), RF: at(2) })
  expect(apart && apartWords('Front axle', apart)).toBe(
    'Front axle: 8/32 in of tread apart. Over 2/32 in: too much.',
  )
})
