/**
 * Source: table of load indices of ISO 4000-1, ETRTO and UN R30, as at least seven public code files print it alike;
 * the standards themselves were not read. Pages on the web carry misprints of it (61 as 265, 62 as 165, 83 as 478).
 */
import { loadOfIndex } from '@bayledger/reckoning/tire/load-index'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const printed = `60 250, 61 257, 62 265, 63 272, 64 280, 65 290, 66 300, 67 307, 68 315, 69 325,
70 335, 71 345, 72 355, 73 365, 74 375, 75 387, 76 400, 77 412, 78 425, 79 437,
80 450, 81 462, 82 475, 83 487, 84 500, 85 515, 86 530, 87 545, 88 560, 89 580,
90 600, 91 615, 92 630, 93 650, 94 670, 95 690, 96 710, 97 730, 98 750, 99 775,
100 800, 101 825, 102 850, 103 875, 104 900, 105 925, 106 950, 107 975, 108 1000, 109 1030,
110 1060, 111 1090, 112 1120, 113 1150, 114 1180, 115 1215, 116 1250, 117 1285, 118 1320, 119 1360,
120 1400, 121 1450, 122 1500, 123 1550, 124 1600, 125 1650, 126 1700, 127 1750, 128 1800, 129 1850, 130 1900,
131 1950, 132 2000, 133 2060, 134 2120, 135 2180, 136 2240, 137 2300, 138 2360, 139 2430, 140 2500`
const rows = printed.split(/,\s*/).map((row) => row.split(' ').map(Number) as [number, number])

published({ document: 'ISO 4000-1 and ETRTO', section: 'load indices 60 to 140', certainty: 'read' }, () => {
  it.each(rows)('load index %i carries %i kg', (index, load) => {
    expect(loadOfIndex(index)).toBe(load)
  })

  it('the table is whole: 81 rows, one after the other', () => {
    expect(rows.map(([index]) => index)).toEqual(Array.from({ length: 81 }, (_, at) => 60 + at))
  })

  it.each([
    [61, 265],
    [62, 165],
    [83, 478],
  ])('the misprint of %i as %i kg is not ours', (index, misprint) => {
    expect(loadOfIndex(index)).not.toBe(misprint)
  })
})
