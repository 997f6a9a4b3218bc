import {
  workCautions as carried,
  issuedWorkCautions,
  workCautionNumbers,
} from '@bayledger/reckoning/cautions/work-cautions'
import { describe, expect, it } from 'vitest'
import { workCautions } from './en/work-cautions.ts'
import { workCautionWords } from './work-cautions.ts'

describe('a caution of the bay', () => {
  it('has words in every version that was ever issued', () => {
    expect(Object.keys(workCautions).toSorted()).toEqual([...workCautionNumbers].toSorted())
    for (const number of workCautionNumbers) {
      const said = issuedWorkCautions[number].map((version) =>
        workCautionWords(workCautions, { number, version }),
      )
      for (const words of said) expect(words?.length).toBeGreaterThan(40)
      expect(new Set(said).size).toBe(said.length)
      expect(Object.keys(workCautions[number]).map(Number)).toEqual(issuedWorkCautions[number])
    }
  })

  it('has none in a version that was not issued', () => {
    expect(workCautionWords(workCautions, { number: 'CW-01', version: 9 })).toBeNull()
  })

  it.each(['seat', 'torque', 'stem', 'pressure', 'torqueAgain', 'repair'] as const)(
    '%s concerns a figure that can hurt and says whose governs',
    (name) => {
      expect(workCautionWords(workCautions, carried[name])).toMatch(/(maker's|label's) [^.]*(govern|limit)/)
    },
  )
})
