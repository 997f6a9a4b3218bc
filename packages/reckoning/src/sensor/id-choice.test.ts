import { describe, expect, it } from 'vitest'
import { idChoices } from './id-choice.ts'

const known = { idKnown: true, afterwards: 'destroyed', samePosition: true } as const

describe('the ID that a new sensor gets', () => {
  it('may be the old one where that is known, goes to its place and lives no more', () => {
    const { copy, new: fresh } = idChoices(known)
    expect(copy).toMatchObject({ allowed: true, relearn: 'often-none' })
    expect(copy.why).toContain('hears the same ID at the same place')
    expect(copy.record).toContain('destroyed')
    expect(copy.danger).toContain('double')
    expect(fresh).toEqual({
      allowed: true,
      relearn: 'required',
      why: 'A new ID is never double.',
      danger: expect.stringContaining('Without the relearn'),
      record: 'The new ID, and the relearn.',
    })
  })

  it.each([
    [{ ...known, idKnown: false }, /nobody knows the old ID/i],
    [{ ...known, afterwards: 'stays-in-use' } as const, /stays in use/],
    [{ ...known, samePosition: false }, /another wheel/],
  ])('is a new one otherwise, with the reason', (old, reason) => {
    const { copy, new: fresh } = idChoices(old)
    expect(copy).toMatchObject({ allowed: false, why: expect.stringMatching(reason) })
    expect(fresh).toMatchObject({
      allowed: true,
      why: expect.stringMatching(/^A new ID is the only way: (nobody|the)/),
    })
    expect(fresh.why).toMatch(reason)
    expect(fresh.why.length).toBe('A new ID is the only way: '.length + copy.why.length)
  })
})
