import { describe, expect, it } from 'vitest'
import { issuedWorkCautions, workCautionNumbers, workCautions } from './work-cautions.ts'

describe('a caution of the bay', () => {
  it('is carried by steps in the newest version that was issued', () => {
    const carried = Object.values(workCautions)
    expect(carried.map(({ number }) => number).toSorted()).toEqual([...workCautionNumbers].toSorted())
    for (const { number, version } of carried) expect(issuedWorkCautions[number].at(-1)).toBe(version)
  })

  it('keeps every version, numbered from 1 without a gap', () => {
    for (const versions of Object.values(issuedWorkCautions))
      expect(versions).toEqual(versions.map((_, index) => index + 1))
  })
})
