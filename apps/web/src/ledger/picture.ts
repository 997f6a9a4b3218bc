import type { RefusalText } from './parcel.ts'

/** A picture as the tablet stored it, until the server has it. Plain values only: it survives a reboot. */
export type KeptPicture = {
  readonly orderId: string
  /** SHA-256 of the bytes. */
  readonly digest: string
  readonly mediaType: string
  readonly bytes: Uint8Array
}

/** Where a tablet keeps pictures. Each promise resolves once that would survive a power cut. */
export type PictureStore = {
  readonly keep: (picture: KeptPicture) => Promise<void>
  readonly digests: () => Promise<readonly string[]>
  readonly find: (digest: string) => Promise<KeptPicture | null>
  readonly drop: (digest: string) => Promise<void>
}

/** What the server says of a picture. */
export type PictureAnswer =
  /** Pieces are missing; `pieces`: the numbers of those that are there. */
  | { readonly is: 'wanted'; readonly pieces: readonly number[] }
  /** It is kept, or it was erased by law: the tablet's own copy is not needed any more. */
  | { readonly is: 'done' }
  /** No entry that the server has names it yet. */
  | { readonly is: 'not-named' }
  /** It changed on its way; all pieces are sent again. */
  | { readonly is: 'damaged' }
  /** Final: it is no picture. */
  | { readonly is: 'refused'; readonly problem: RefusalText }
  | { readonly is: 'out-of-reach' }
