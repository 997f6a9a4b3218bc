import { randomBytes } from 'node:crypto'
import { sideDigest } from '@bayledger/ledger/hash-chain'
import type { SideToKeep } from '../store/projections/projection.ts'

/** A personal text as a side, with a new salt and the digest that an entry's payload names. */
export const sealPersonalText = (text: string): SideToKeep => {
  const salt = randomBytes(32)
  return { side: 'personal', digest: sideDigest(text, salt), salt, text }
}
