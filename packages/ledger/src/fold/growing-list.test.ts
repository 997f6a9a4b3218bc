import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { growingList, membersOf, push } from './growing-list.ts'

describe('a list that is only continued', () => {
  it('keeps every list as it was, whichever of them is continued', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(50), fc.integer()), { maxLength: 50 }), (steps) => {
        const lists = [growingList<number>([])]
        const plain: number[][] = [[]]
        for (const [from, member] of steps) {
          const index = from % lists.length
          lists.push(push(lists[index] ?? growingList([]), member))
          plain.push([...(plain[index] ?? []), member])
        }
        expect(lists.map(membersOf)).toEqual(plain)
      }),
    )
  })
})
