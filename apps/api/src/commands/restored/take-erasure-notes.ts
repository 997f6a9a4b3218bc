import { copyFileSync, existsSync, mkdirSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { isErasureNote } from '../../proof/erasure-notes.ts'

/**
 * Copies the notes of erasures that a shop's own digest folder holds into that of a restored shop, where they are missing: who was
 * erased after the backup is erased again at the first start. Gives how many were copied.
 */
export const takeErasureNotes = (from: string, to: string): number => {
  if (!existsSync(from)) return 0
  let copied = 0
  for (const shop of readdirSync(from, { withFileTypes: true }).filter((entry) => entry.isDirectory()))
    for (const name of readdirSync(join(from, shop.name)).filter(isErasureNote)) {
      const file = join(to, shop.name, name)
      if (existsSync(file)) continue
      mkdirSync(join(to, shop.name), { recursive: true, mode: 0o700 })
      copyFileSync(join(from, shop.name, name), file)
      copied += 1
    }
  return copied
}
