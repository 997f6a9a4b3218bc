/**
 * Sources: two repair shops' pages on reading a tread, read online in 2026 (reasonablerides.com, a page of 2019;
 * apalacheervcenter.homestead.com): center, both shoulders, the inside or the outside shoulder are the ways in which tires
 * wear, by too much pressure, too little, and alignment.
 */
import { type WearHint, wearHint } from '@bayledger/reckoning/tire/wear-hints'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const patterns: readonly [WearHint, number, number, number][] = [
  ['middle', 7, 3, 7],
  ['both-shoulders', 3, 7, 3],
  ['inner-shoulder', 3, 7, 7],
  ['outer-shoulder', 7, 7, 3],
]

published({ document: 'Two pages on how to read a tread', edition: '2026', certainty: 'read' }, () => {
  it.each(patterns)('%s is one of the ways', (hint, inner, middle, outer) => {
    expect(wearHint({ inner, middle, outer })).toBe(hint)
  })
})
