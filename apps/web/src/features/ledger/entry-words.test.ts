import type { Foldable } from '@bayledger/ledger/fold/foldable'
import { describe, expect, it } from 'vitest'
import { entryWords } from './entry-words.ts'

describe('a line of the history', () => {
  it('shows a pressure with the decimals that it has everywhere else, and no code', () => {
    const written = (answer: string) =>
      ({
        kind: 'wheel.checked',
        payload: {
          wheel: 'RF',
          gauge: { pressure: { value: 34, unit: 'psi' } },
          sensor: { answer },
          notPossible: [],
        },
      }) as unknown as Foldable
    expect(entryWords(written('answered'))).toBe('Wheel read, RF: 34.0 psi, sensor answered')
    expect(entryWords(written('not-tried'))).toBe('Wheel read, RF: 34.0 psi, sensor not tried')
  })
})
