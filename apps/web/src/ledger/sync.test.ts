import { describe, expect, it } from 'vitest'
import type { Gained, OrderReply } from './order.ts'
import { catchUp, hearFirst, type SyncWorld } from './sync.ts'

const order = (seq: number) =>
  ({
    orderId: 'order',
    head: { seq, hash: String(seq) },
    entries: Array.from({ length: seq }, (_, index) => ({ seq: index + 1 })),
    sides: [],
    withheld: [],
    history: null,
    heldAlone: false,
  }) as unknown as OrderReply

const after = (seq: number, from = 0): Gained => {
  const { head, entries } = order(seq)
  const gained = entries.filter((entry) => entry.seq > from)
  return { head, entries: gained, sides: [], withheld: [], history: null, heldAlone: false }
}

/** A device that holds an order, and a server that answers with `answer`. */
const device = (held: OrderReply | undefined, answer: SyncWorld['readGained']) => {
  let now = held
  let whole = 0
  const world: SyncWorld = {
    held: () => now,
    readGained: answer,
    change: (_orderId, change) => {
      if (now) now = change(now)
    },
    readWhole: async () => {
      whole += 1
    },
  }
  return {
    catchUp: () => catchUp(world, 'order'),
    hearFirst: () => hearFirst(world, 'order'),
    seq: () => now?.head.seq,
    heldAlone: () => now?.heldAlone,
    whole: () => whole,
    bring: (newer: OrderReply) => {
      now = newer
    },
  }
}

describe('catching up with an order', () => {
  it('adds what the order gained after the last entry that is held', async () => {
    const { catchUp, seq, whole } = device(order(2), async (_, from) => after(4, from))
    expect(await catchUp()).toBe(true)
    expect(seq()).toBe(4)
    expect(whole()).toBe(0)
  })

  it('says that nothing was gained', async () => {
    const { catchUp } = device(order(2), async (_, from) => after(2, from))
    expect(await catchUp()).toBe(false)
  })

  it('never goes back behind what another reading brought meanwhile', async () => {
    const held = device(order(2), async (_, from) => {
      held.bring(order(5))
      return after(4, from)
    })
    await held.catchUp()
    expect(held.seq()).toBe(5)
  })

  it.each<[string, OrderReply | undefined, SyncWorld['readGained']]>([
    ['is not held', undefined, async () => after(1)],
    ['lacks an entry between', order(2), async () => after(4, 3)],
    ['gets no answer', order(2), async () => Promise.reject(new Error('no answer'))],
  ])('reads an order whole that %s', async (_what, held, answer) => {
    const { catchUp, whole } = device(held, answer)
    expect(await catchUp()).toBe(false)
    expect(whole()).toBe(1)
  })
})

describe('hearing the server before the road opens', () => {
  const noAnswer: SyncWorld['readGained'] = async () => Promise.reject(new Error('no answer'))

  it('joins what others wrote, whoever holds the order', async () => {
    const { hearFirst, seq } = device(order(2), async (_, from) => after(4, from))
    expect(await hearFirst()).toBe('heard')
    expect(seq()).toBe(4)
  })

  it('relies on what is here only where this tablet alone holds the order', async () => {
    expect(await device({ ...order(2), heldAlone: true }, noAnswer).hearFirst()).toBe('alone')
    expect(await device({ ...order(2), heldAlone: false }, noAnswer).hearFirst()).toBe('unheard')
    expect(await device(undefined, noAnswer).hearFirst()).toBe('unheard')
  })

  it('does not rely on what it knew before it asked', async () => {
    const held = device({ ...order(2), heldAlone: true }, async () => {
      held.bring(order(2))
      throw new Error('no answer')
    })
    expect(await held.hearFirst()).toBe('unheard')
  })

  it('hears that another tablet holds the order though nothing was written', async () => {
    const held = device({ ...order(2), heldAlone: true }, async (_, from) => ({
      ...after(2, from),
      heldAlone: false,
    }))
    expect(await held.catchUp()).toBe(false)
    expect(held.heldAlone()).toBe(false)
  })
})
