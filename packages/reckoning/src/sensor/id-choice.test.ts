import { describe, expect, it } from 'vitest'
import { idChoices } from './id-choice.ts'

const known = { idKnown: true, afterwards: 'destroyed', samePosition: true } as const

describe('the ID that a new sensor gets', () => {
  it('may be the old one where that is known, goes to its place and its sensor is destroyed', () => {
    expect(idChoices(known)).toEqual({
      copy: { allowed: true, relearn: 'often-none' },
      new: { relearn: 'required' },
    })
  })

  it.each([
    [{ ...known, idKnown: false }, 'old-id-unknown'],
    [{ ...known, afterwards: 'stays-in-use' } as const, 'old-sensor-in-use'],
    [{ ...known, samePosition: false }, 'other-position'],
  ])('is a new one otherwise, with the reason', (old, why) => {
    expect(idChoices(old)).toEqual({ copy: { allowed: false, why }, new: { relearn: 'required' } })
  })
})
