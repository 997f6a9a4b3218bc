import type { PartOnStock } from '@bayledger/ledger/admit/facts'
import * as z from 'zod/mini'

/** What a line of the stock list says of its part. A dual part sends on a second frequency. */
export const PartFamily = z.object({
  kind: z.enum(['sensor', 'kit', 'repair-unit']),
  words: z.string(),
  frequencyMHz: z.nullable(z.number()),
  alsoMHz: z.optional(z.nullable(z.number())),
  stem: z.nullable(z.enum(['snap-in', 'clamp-in'])),
  madeMonth: z.nullable(z.string()),
  blocked: z.nullable(z.string()),
})
type PartFamily = z.infer<typeof PartFamily>

/** The frequencies that a part sends on, in MHz; empty where none is on the list. */
export const frequenciesOf = ({ frequencyMHz, alsoMHz }: PartFamily): number[] =>
  [frequencyMHz, alsoMHz ?? null].flatMap((one) => one ?? [])

/** A line of the stock list as matching reads it; of a line that cannot be read nothing is known. */
export const partOnStock = (family: unknown): PartOnStock => {
  const read = PartFamily.safeParse(family)
  if (!read.success) return { frequenciesMHz: null, stem: null, madeMonth: null, heldBack: null }
  const frequencies = frequenciesOf(read.data)
  return {
    frequenciesMHz: frequencies.length === 0 ? null : frequencies,
    stem: read.data.stem,
    madeMonth: read.data.madeMonth,
    heldBack: read.data.blocked,
  }
}
