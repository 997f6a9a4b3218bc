import { describe, expect, it } from 'vitest'
import { workCautionByNumber, workCautions } from './work-cautions.ts'

const all = Object.values(workCautions)

describe('a caution of the bay', () => {
  it('has a number of its own, by which it is found, and a version', () => {
    expect(new Set(all.map(({ number }) => number)).size).toBe(all.length)
    for (const caution of all) {
      expect(caution.number).toMatch(/^CW-\d\d$/)
      expect(caution.version).toBeGreaterThan(0)
      expect(workCautionByNumber(caution.number)).toBe(caution)
    }
    expect(workCautionByNumber('CW-99')).toBeUndefined()
  })

  it.each(['seat', 'torque', 'stem', 'pressure', 'torqueAgain', 'repair'] as const)(
    '%s concerns a figure that can hurt and says whose governs',
    (name) => {
      expect(workCautions[name].words).toMatch(/(maker's|label's) [^.]*(govern|limit)/)
    },
  )
})
