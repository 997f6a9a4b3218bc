import { expect, it } from 'vitest'
import { keepDecision, keptDecision, nothingFilledIn, withRelation } from './kept-decision.ts'

const storageOf = () => {
  const kept = new Map<string, string>()
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  }
}

const half = { ...nothingFilledIn, answers: { stem: 'deferred' }, name: 'W. Dunmore-Gray' } as const

it('is as it was filled in, under the version that it answers and no other', () => {
  const storage = storageOf()
  keepDecision(storage, 'one', half)
  expect(keptDecision(storage, 'one')).toEqual(half)
  expect(keptDecision(storage, 'two')).toEqual(nothingFilledIn)
})

it('has the owner’s name from the card, and never for somebody else', () => {
  const owner = withRelation(nothingFilledIn, 'owner', 'W. Dunmore-Gray')
  expect(owner).toMatchObject({ relation: 'owner', name: 'W. Dunmore-Gray' })
  expect(withRelation(owner, 'named-person', 'W. Dunmore-Gray').name).toBe('')
  const typed = { ...nothingFilledIn, name: 'J. Dunmore' }
  expect(withRelation(typed, 'owner', 'W. Dunmore-Gray').name).toBe('J. Dunmore')
})

it('is gone once it was sent', () => {
  const storage = storageOf()
  keepDecision(storage, 'one', half)
  keepDecision(storage, 'one', nothingFilledIn)
  expect(storage.getItem('one')).toBeNull()
})

it('is empty where the browser keeps nothing, or something else lies there', () => {
  const refuses = () => {
    throw new Error('no storage')
  }
  const storage = { getItem: refuses, setItem: refuses, removeItem: refuses }
  expect(() => keepDecision(storage, 'one', half)).not.toThrow()
  expect(keptDecision(storage, 'one')).toEqual(nothingFilledIn)
  expect(keptDecision({ ...storageOf(), getItem: () => '{' }, 'one')).toEqual(nothingFilledIn)
})
