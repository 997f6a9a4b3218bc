import type { SentSide } from '@bayledger/contract/entries'
import { sideDigest } from '@bayledger/ledger/digests'
import { type Kind, type PayloadOf, versionOf } from '@bayledger/ledger/registry'
import { v7 } from 'uuid'

/** An entry as a device writes it; its id is made here and is sent again unchanged with every retry. */
export type WrittenDraft<K extends Kind = Kind> = {
  readonly id: string
  readonly orderId: string
  readonly kind: K
  readonly version: number
  readonly payload: PayloadOf<K>
  readonly writtenAt: string
  readonly restsOn: string[]
}

export const newId = (): string => v7()

/** Makes an entry of a kind. `restsOn` names entries that this one is worth nothing without. */
export const draftEntry = <K extends Kind>(
  orderId: string,
  kind: K,
  payload: PayloadOf<K>,
  restsOn: readonly string[] = [],
): WrittenDraft<K> => ({
  id: newId(),
  orderId,
  kind,
  version: versionOf(kind),
  payload,
  writtenAt: new Date().toISOString(),
  restsOn: [...restsOn],
})

/** A side with a fresh salt: the payload carries the digest, the text goes beside it. */
export const sealSide = (text: string): SentSide => {
  const salt = crypto.getRandomValues(new Uint8Array(32))
  return { digest: sideDigest(text, salt), salt: btoa(String.fromCharCode(...salt)), text }
}

/** Personal words as a side. */
export const personal = (text: string): SentSide => sealSide(text)
