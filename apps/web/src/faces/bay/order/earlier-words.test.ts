import { nothingOnRecord } from '@bayledger/ledger/questions/history-of'
import { expect, it } from 'vitest'
import { earlierWords } from './earlier-words.ts'

it('says wheel by wheel what we did and read before, and nothing of a wheel that no record names', () => {
  const history = {
    ...nothingOnRecord,
    ourWorkOn: ['RR' as const],
    earlierReadings: [
      { wheel: 'RR' as const, pressure: 36, gauge: 'G-1', daysAgo: 12.4 },
      { wheel: 'LF' as const, pressure: 33.5, daysAgo: 0.2 },
      { wheel: 'SP' as const, pressure: 60, daysAgo: 0.9 },
    ],
  }
  expect(earlierWords(history)).toEqual([
    { name: 'left front', says: 'last read 33.5 psi, on the day of this visit' },
    { name: 'right rear', says: 'we worked on it; last read 36.0 psi, 12 days before this visit, gauge G-1' },
    { name: 'spare', says: 'last read 60.0 psi, 1 day before this visit' },
  ])
  expect(earlierWords(nothingOnRecord)).toEqual([])
})
