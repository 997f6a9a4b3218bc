/**
 * Source: sample sizes of an owner handbook, as quoted: P215/65R15XL 95H, 215/65R15 96H, LT235/85R16C, T145/80D18 103M,
 * 31x10.5R15 LT; no load mark means standard load.
 */
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { tireSizeText } from '@bayledger/reckoning/tire/tire-size'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const service = (loadIndex: number, speed: string) => ({ loadIndex, dualLoadIndex: null, speed })
const metric = { kind: 'metric', prefix: null, suffix: null, zr: false, construction: 'R' }
const samples = [
  [
    'P215/65R15XL 95H',
    {
      ...metric,
      prefix: 'P',
      width: 215,
      aspectPercent: 65,
      rimInches: 15,
      loadMark: 'XL',
      service: service(95, 'H'),
    },
  ],
  [
    '215/65R15 96H',
    { ...metric, width: 215, aspectPercent: 65, rimInches: 15, loadMark: null, service: service(96, 'H') },
  ],
  [
    'LT235/85R16C',
    { ...metric, prefix: 'LT', width: 235, aspectPercent: 85, rimInches: 16, loadMark: 'C', service: null },
  ],
  [
    'T145/80D18 103M',
    {
      ...metric,
      prefix: 'T',
      construction: 'D',
      width: 145,
      aspectPercent: 80,
      rimInches: 18,
      loadMark: null,
      service: service(103, 'M'),
    },
  ],
  [
    '31x10.5R15 LT',
    {
      kind: 'flotation',
      diameterInches: 31,
      widthInches: 10.5,
      construction: 'R',
      rimInches: 15,
      loadMark: null,
      service: null,
    },
  ],
] as const

published({ document: 'An owner handbook', section: 'sample tire sizes', certainty: 'quoted' }, () => {
  it.each(samples)('%s is read part by part', (typed, size) => {
    expect(readTireSize(typed)).toEqual({ ok: true, value: size })
  })

  it.each(samples)('%s is read again from our own text of it', (typed, size) => {
    const read = readTireSize(typed)
    expect(read.ok && readTireSize(tireSizeText(read.value))).toEqual({ ok: true, value: size })
  })
})
