/**
 * Source: a tire wholesaler's chart "Percent of wear chart for adjustment purposes, automobile and light truck tires", read online
 * in 2026: the percentage worn by the depth that is left and the depth when new, both in 32nds. Of its rows these four; where
 * the chart rounds a half or a little less another way, it is a point apart.
 */
import { proRata } from '@bayledger/reckoning/tire/pro-rata'
import { expect, it } from 'vitest'
import { published } from './published.ts'

/** By the depth left: the percentage for 8, 9, 10 … 32 when new. */
const rows: Readonly<Record<number, string>> = {
  3: '83 86 88 89 90 91 92 92 93 93 93 94 94 95 95 95 95 95 96 96 96 96 96 97 97',
  5: '50 57 63 67 70 73 75 77 79 80 81 82 83 84 85 86 86 87 88 88 88 89 89 90 90',
  6: '33 43 50 56 60 64 67 69 71 73 75 76 78 79 80 81 82 83 83 84 85 85 86 86 87',
  7: '17 29 38 44 50 55 58 62 64 67 69 71 72 74 75 76 77 78 79 80 81 81 82 83 83',
}

published(
  {
    document: 'A tire wholesaler’s percent of wear chart',
    section: 'automobile and light truck tires',
    edition: '2026',
    certainty: 'read',
  },
  () => {
    it.each(Object.entries(rows))('%s/32 left', (left, row) => {
      const printed = row.split(' ').map(Number)
      const ours = printed.map((_, index) => proRata(index + 8, Number(left), 10_000)?.wornPercent ?? -1)
      expect(ours.filter((worn, index) => Math.abs(worn - (printed[index] ?? 0)) > 1)).toEqual([])
    })

    it.each([
      [8, 6, 33],
      [9, 5, 57],
      [10, 6, 50],
      [12, 7, 50],
      [13, 5, 73],
    ])('%d/32 new and %d/32 left is %d percent', (isNew, left, percent) => {
      expect(Math.round(proRata(isNew, left, 10_000)?.wornPercent ?? -1)).toBe(percent)
    })
  },
)
