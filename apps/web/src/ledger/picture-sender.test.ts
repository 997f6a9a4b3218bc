import { describe, expect, it } from 'vitest'
import type { KeptPicture, PictureAnswer, PictureStore } from './picture.ts'
import { makePictureSender } from './picture-sender.ts'
import { VaultShut } from './vault.ts'

const picture = (digest: string, length = 10): KeptPicture => ({
  orderId: 'order',
  digest,
  mediaType: 'image/jpeg',
  bytes: Uint8Array.from({ length }, (_, index) => index),
})

/** A store that outlives its sender, as a disk outlives a page. */
const disk = (): PictureStore & { readonly kept: Map<string, KeptPicture> } => {
  const kept = new Map<string, KeptPicture>()
  return {
    kept,
    keep: async (one) => void kept.set(one.digest, one),
    digests: async () => [...kept.keys()],
    find: async (digest) => kept.get(digest) ?? null,
    drop: async (digest) => void kept.delete(digest),
  }
}

/** A server that takes pieces of four bytes, and what it was sent. */
const bench = (store = disk()) => {
  const named = new Set<string>()
  const pieces = new Map<string, Map<number, Uint8Array>>()
  const puts: string[] = []
  const retries: (() => void)[] = []
  const handedIn: string[] = []
  let reach: 'up' | 'down' | number = 'up'
  let answer: PictureAnswer | null = null
  const statusOf = (digest: string): PictureAnswer => {
    if (!named.has(digest)) return { is: 'not-named' }
    const have = pieces.get(digest) ?? new Map<number, Uint8Array>()
    const length = [...have.values()].reduce((sum, { length }) => sum + length, 0)
    return length === 10 ? { is: 'done' } : { is: 'wanted', pieces: [...have.keys()] }
  }
  const sender = makePictureSender({
    store,
    pieceBytes: 4,
    status: async (digest) => (reach === 'down' ? { is: 'out-of-reach' } : statusOf(digest)),
    putPiece: async (digest, number, bytes) => {
      puts.push(`${digest} ${number}`)
      if (reach === 'down') return { is: 'out-of-reach' }
      if (typeof reach === 'number') reach = reach === 1 ? 'down' : reach - 1
      if (answer !== null) return answer
      pieces.set(digest, (pieces.get(digest) ?? new Map()).set(number, bytes))
      return statusOf(digest)
    },
    handInSealed: async (digest) => {
      handedIn.push(digest)
      return answer ?? { is: 'done' }
    },
    retryAfter: (_milliseconds, retry) => void retries.push(retry),
    alone: (work) => work(),
  })
  return {
    store,
    sender,
    named,
    pieces,
    puts,
    handedIn,
    /** How many more pieces go through before the network is gone. */
    reach: (next: typeof reach) => {
      reach = next
    },
    answers: (next: PictureAnswer | null) => {
      answer = next
    },
    settled: () => new Promise((resolve) => setTimeout(resolve, 5)),
    retry: () => {
      for (const again of retries.splice(0)) again()
    },
  }
}

describe('a picture on a tablet', () => {
  it('is sent in pieces, and is gone from the tablet once the server has all of it', async () => {
    const { sender, store, named, pieces, puts, settled } = bench()
    named.add('one')
    await sender.keep(picture('one'))
    await settled()
    expect(puts).toEqual(['one 0', 'one 1', 'one 2'])
    expect([...(pieces.get('one')?.values() ?? [])].flatMap((piece) => [...piece])).toEqual([
      ...picture('one').bytes,
    ])
    expect(store.kept.size).toBe(0)
    expect(sender.content().waiting).toEqual([])
  })

  it('goes on where it stopped, after the network was gone and the page was loaded again', async () => {
    const { sender, store, named, pieces, puts, reach, settled } = bench()
    named.add('one')
    reach(2)
    await sender.keep(picture('one'))
    await settled()
    expect(sender.content().waiting).toEqual(['one'])
    expect(store.kept.size).toBe(1)
    const later = bench(store)
    later.named.add('one')
    later.pieces.set('one', pieces.get('one') ?? new Map())
    later.sender.wake()
    await later.settled()
    expect(puts).toEqual(['one 0', 'one 1', 'one 2'])
    expect(later.puts).toEqual(['one 2'])
    expect(store.kept.size).toBe(0)
  })

  it('waits for its entry, and does not hold the others up', async () => {
    const { sender, store, named, settled } = bench()
    named.add('two')
    await sender.keep(picture('one'))
    await sender.keep(picture('two'))
    await settled()
    expect(sender.content().waiting).toEqual(['one'])
    named.add('one')
    sender.wake()
    await settled()
    expect(store.kept.size).toBe(0)
  })

  it('is tried again by itself', async () => {
    const { sender, store, named, reach, retry, settled } = bench()
    named.add('one')
    reach('down')
    await sender.keep(picture('one'))
    await settled()
    reach('up')
    retry()
    await settled()
    expect(store.kept.size).toBe(0)
  })

  it('of which the server has every piece and is not done is kept, and its last piece is sent again', async () => {
    const { sender, store, named, pieces, puts, answers, settled } = bench()
    named.add('one')
    pieces.set('one', new Map([0, 1, 2].map((number) => [number, new Uint8Array(1)])))
    answers({ is: 'wanted', pieces: [0, 1, 2] })
    await sender.keep(picture('one'))
    await settled()
    expect(puts).toEqual(['one 2'])
    expect(store.kept.size).toBe(1)
  })

  it('that is no picture stays until someone has read so, and is not sent again', async () => {
    const { sender, store, named, puts, answers, settled } = bench()
    const problem = { title: 'No photo', detail: 'Take it again.' }
    named.add('one')
    answers({ is: 'refused', problem })
    await sender.keep(picture('one'))
    await settled()
    sender.wake()
    await settled()
    expect(puts).toEqual(['one 0'])
    expect(sender.content()).toEqual({ isRead: true, waiting: [], refused: [{ digest: 'one', problem }] })
    expect(store.kept.size).toBe(1)
    await sender.forget('one')
    expect(sender.content()).toEqual({ isRead: true, waiting: [], refused: [] })
    expect(store.kept.size).toBe(0)
  })

  it('that cannot be read here any more is handed in as it is sealed, and keeps no other one back', async () => {
    const store = disk()
    const { find } = store
    const shut: typeof store = {
      ...store,
      find: async (digest) => {
        if (digest === 'old') throw new VaultShut()
        return find(digest)
      },
    }
    const { sender, named, handedIn, settled } = bench(shut)
    for (const digest of ['old', 'new']) {
      named.add(digest)
      await sender.keep(picture(digest))
    }
    await settled()
    expect(handedIn).toEqual(['old'])
    expect(store.kept.size).toBe(0)
  })

  it('that the tablet has no room for is not kept, and its taker hears so', async () => {
    const full: PictureStore = {
      ...disk(),
      keep: async () => {
        throw new Error('full')
      },
    }
    const sender = makePictureSender({
      store: full,
      pieceBytes: 4,
      status: async () => ({ is: 'out-of-reach' }),
      putPiece: async () => ({ is: 'out-of-reach' }),
      handInSealed: async () => ({ is: 'out-of-reach' }),
      retryAfter: () => undefined,
      alone: (work) => work(),
    })
    await expect(sender.keep(picture('one'))).rejects.toThrow('full')
    expect(sender.content().waiting).toEqual([])
  })
})
