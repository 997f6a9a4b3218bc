import { expect, it } from 'vitest'
import { withGained } from './order.ts'

type Held = Parameters<typeof withGained>[0]
type Gained = Parameters<typeof withGained>[1]

const entry = (seq: number) => ({ seq }) as Held['entries'][number]
const head = (seq: number) => ({ seq, hash: String(seq) })
const held = {
  head: head(2),
  entries: [entry(1), entry(2)],
  sides: [{ side: 'personal', digest: 'x', text: 'kept' }],
  withheld: [],
  history: null,
} as unknown as Held

it('adds the entries after the last one that is held, and the sides that are new', () => {
  const gained: Gained = {
    head: head(4),
    entries: [entry(2), entry(3), entry(4)],
    sides: [
      { side: 'personal', digest: 'x', text: 'kept' },
      { side: 'personal', digest: 'y', text: 'new' },
    ],
    withheld: [],
    history: null,
    heldAlone: false,
  }
  const merged = withGained(held, gained)
  expect(merged?.entries.map(({ seq }) => seq)).toEqual([1, 2, 3, 4])
  expect(merged?.sides.map(({ digest }) => digest)).toEqual(['x', 'y'])
  expect(merged?.head).toEqual(head(4))
})

it('gives nothing where an entry between is missing', () => {
  expect(
    withGained(held, {
      head: head(4),
      entries: [entry(4)],
      sides: [],
      withheld: [],
      history: null,
      heldAlone: false,
    }),
  ).toBeNull()
})
