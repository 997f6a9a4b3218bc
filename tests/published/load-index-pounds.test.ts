/**
 * Source: a tire dealer's chart of load indices 71 to 110 in pounds, read online in 2026. It agrees with kg × 2.20462
 * rounded to the pound in 38 of 40 rows; the two others, 87 and 107, it prints a pound lower, cut off instead of
 * rounded. Of the chart six further figures were written down, and it is held here to those and to the two exceptions.
 */
import { poundsOfIndex } from '@bayledger/reckoning/tire/load-index'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  {
    document: 'A tire dealer’s chart',
    section: 'load indices in pounds',
    edition: '2026',
    certainty: 'read',
  },
  () => {
    it.each([
      [71, 761],
      [91, 1_356],
      [95, 1_521],
      [98, 1_653],
      [100, 1_764],
      [110, 2_337],
    ])('load index %i is %i lb, as the chart has it', (index, pounds) => {
      expect(poundsOfIndex(index)).toBe(pounds)
    })

    it.each([
      [87, 1_201],
      [107, 2_149],
    ])('load index %i is a pound over the %i lb that the chart prints', (index, printed) => {
      expect(poundsOfIndex(index)).toBe(printed + 1)
    })
  },
)
