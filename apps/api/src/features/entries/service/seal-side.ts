import { randomBytes } from 'node:crypto'
import { sideDigest } from '@bayledger/ledger/digests'
import type { SideKind } from '@bayledger/ledger/side-kinds'
import type { SideToKeep } from '../store/projections/projection.ts'

/** A text as a side of a kind, with a new salt and the digest that an entry's payload names. */
export const sealSide = (side: SideKind, text: string): SideToKeep => {
  const salt = randomBytes(32)
  return { side, digest: sideDigest(text, salt), salt, text }
}
