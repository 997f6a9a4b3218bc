import type { StockContent } from '@bayledger/contract/stock'
import type { PartOnStock } from '@bayledger/ledger/admit/facts'
import * as z from 'zod/mini'

/** A field that lines of the stock list from before it had it lack. */
const later = <S extends z.ZodMiniType>(schema: S) => z._default(z.nullable(schema), null as never)

/** What a line of the stock list says of its part, as it is stored; a dual part sends on a second frequency. */
const PartFamily = z.object({
  kind: z.enum(['sensor', 'kit', 'repair-unit', 'tire', 'fastener', 'supply']),
  words: z.string(),
  frequencyMHz: z.nullable(z.number()),
  alsoMHz: later(z.number()),
  stem: z.nullable(z.enum(['snap-in', 'clamp-in'])),
  madeMonth: z.nullable(z.string()),
  blocked: z.nullable(z.string()),
  holeMillimeters: later(z.number()),
  protocols: z._default(z.array(z.string()), []),
  ratedPsi: later(z.number()),
  nutLbfIn: later(z.number()),
  screwLbfIn: later(z.number()),
  shelfMonths: later(z.int()),
  minimum: later(z.int()),
  leadDays: later(z.int()),
  coreDepositCents: later(z.int()),
  supplier: later(z.string()),
})

/** What a line says of its part, whichever its number and its place. */
export type PartContent = Omit<StockContent, 'partNumber' | 'locationId'>

/** What a stored line says of its part; `null` where it cannot be read. */
export const contentOf = (family: unknown): PartContent | null => {
  const read = PartFamily.safeParse(family)
  if (!read.success) return null
  const { frequencyMHz, alsoMHz, blocked, ...rest } = read.data
  return { ...rest, frequenciesMHz: [frequencyMHz, alsoMHz].flatMap((one) => one ?? []), heldBack: blocked }
}

/** The line as it is stored. */
export const familyOf = ({ frequenciesMHz, heldBack, ...rest }: PartContent): z.infer<typeof PartFamily> => ({
  ...rest,
  frequencyMHz: frequenciesMHz[0] ?? null,
  alsoMHz: frequenciesMHz[1] ?? null,
  blocked: heldBack,
})

/** A line of the stock list as matching reads it; nothing is known of a line that cannot be read. */
export const partOnStock = (family: unknown): PartOnStock => {
  const content = contentOf(family)
  if (content === null) return unknownPart
  const { frequenciesMHz, protocols, stem, madeMonth, heldBack, holeMillimeters, ratedPsi, shelfMonths } =
    content
  return {
    frequenciesMHz: frequenciesMHz.length === 0 ? null : frequenciesMHz,
    protocols: protocols.length === 0 ? null : protocols,
    stem,
    madeMonth,
    heldBack,
    holeMillimeters,
    ratedPsi,
    shelfMonths,
  }
}

const unknownPart: PartOnStock = {
  frequenciesMHz: null,
  protocols: null,
  stem: null,
  madeMonth: null,
  heldBack: null,
  holeMillimeters: null,
  ratedPsi: null,
  shelfMonths: null,
}
