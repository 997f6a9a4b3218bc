import { type BehindScreenWorld, makeBehindScreen, type Rest } from './behind-screen.ts'
import type { RefusalText } from './parcel.ts'
import type { KeptPicture, PictureAnswer, PictureStore } from './picture.ts'
import { VaultShut } from './vault.ts'

export type PictureWorld = BehindScreenWorld & {
  readonly store: PictureStore
  readonly pieceBytes: number
  readonly status: (digest: string) => Promise<PictureAnswer>
  readonly putPiece: (digest: string, number: number, bytes: Uint8Array) => Promise<PictureAnswer>
  /** Hands in, as it is sealed to the server, a picture that cannot be read here any more. */
  readonly handInSealed: (digest: string) => Promise<PictureAnswer>
}

export type PictureContent = {
  /** What the tablet keeps was read; before that nobody knows what waits. */
  readonly isRead: boolean
  /** Kept here and not received by the server. */
  readonly waiting: readonly string[]
  readonly refused: readonly { readonly digest: string; readonly problem: RefusalText }[]
}

export type PictureSender = {
  /** Keeps a picture so that a power cut loses none of it. It rejects where the tablet has no room. */
  readonly keep: (picture: KeptPicture) => Promise<void>
  /** Tries again: the network is back, or an entry was delivered. */
  readonly wake: () => void
  /** Forgets a picture whose entry was refused, or that is no picture; a person has read so. */
  readonly forget: (digest: string) => Promise<void>
  readonly find: (digest: string) => Promise<KeptPicture | null>
  readonly content: () => PictureContent
  readonly subscribe: (listener: () => void) => () => void
}

/**
 * Sends what `world.store` keeps, piece by piece: it asks first which pieces the server has, so that a picture goes on
 * where it stopped. A picture leaves the store only when the server says that it is done.
 */
export const makePictureSender = (world: PictureWorld): PictureSender => {
  let content: PictureContent = { isRead: false, waiting: [], refused: [] }
  const listeners = new Set<() => void>()

  const show = (next: Partial<PictureContent>) => {
    content = { ...content, ...next }
    for (const listener of listeners) listener()
  }

  const read = async () => {
    const refused = new Set(content.refused.map(({ digest }) => digest))
    const waiting = (await world.store.digests()).filter((digest) => !refused.has(digest))
    show({ isRead: true, waiting })
  }

  const drop = async (digest: string) => {
    await world.store.drop(digest)
    show({ waiting: content.waiting.filter((other) => other !== digest) })
  }

  const sendPieces = async (digest: string, have: readonly number[]): Promise<PictureAnswer> => {
    const picture = await world.store.find(digest).catch((thrown: unknown) => {
      if (thrown instanceof VaultShut) return 'shut' as const
      throw thrown
    })
    if (picture === 'shut') return world.handInSealed(digest)
    let answer: PictureAnswer = { is: 'done' }
    if (picture === null) return answer
    const { bytes } = picture
    const count = Math.ceil(bytes.length / world.pieceBytes)
    const missing = Array.from({ length: count }, (_, number) => number).filter((one) => !have.includes(one))
    // All are there and not put together: the server fell in between, and the last one calls it to mind.
    for (const number of missing.length === 0 ? [count - 1] : missing) {
      const from = number * world.pieceBytes
      answer = await world.putPiece(digest, number, bytes.slice(from, from + world.pieceBytes))
      if (answer.is !== 'wanted') return answer
    }
    return answer
  }

  /** Sends one picture; gives back whether the next may be tried. */
  const sendOne = async (digest: string): Promise<boolean> => {
    const status = await world.status(digest)
    const answer = status.is === 'wanted' ? await sendPieces(digest, status.pieces) : status
    if (answer.is === 'done') await drop(digest)
    if (answer.is === 'refused')
      show({
        waiting: content.waiting.filter((other) => other !== digest),
        refused: [...content.refused, { digest, problem: answer.problem }],
      })
    return answer.is !== 'out-of-reach'
  }

  const sendAll = async (progressed: () => void): Promise<Rest> => {
    await read()
    for (const digest of content.waiting) if (!(await sendOne(digest))) return 'rest-left'
    if (content.waiting.length > 0) return 'rest-left'
    progressed()
    return 'nothing-left'
  }

  const sending = makeBehindScreen(world, sendAll, () => undefined)

  return {
    keep: async (picture) => {
      await world.store.keep(picture)
      show({ waiting: [...new Set([...content.waiting, picture.digest])] })
      sending.wake()
    },
    wake: sending.wake,
    forget: async (digest) => {
      show({ refused: content.refused.filter((one) => one.digest !== digest) })
      await drop(digest)
    },
    find: (digest) => world.store.find(digest),
    content: () => content,
    subscribe: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
  }
}
