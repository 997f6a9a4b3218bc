import { describe, expect, it } from 'vitest'
import { timerWords } from './timer-words.ts'

describe('a timer', () => {
  it.each([
    [0, 120, '0:00 of 2:00'],
    [42.9, 120, '0:42 of 2:00'],
    [119.9, 120, '1:59 of 2:00'],
    [120, 120, '2:00: time is up'],
    [605, 120, '10:05: time is up'],
    [61, null, '1:01'],
    // The clock of a tablet may be set back while it counts.
    [-3, 120, '0:00 of 2:00'],
  ])('after %d s of %s says %s', (passed, target, words) => {
    expect(timerWords(passed, target)).toBe(words)
  })
})
