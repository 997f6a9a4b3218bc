import type * as z from 'zod/mini'

/**
 * What the ledger knows of one kind of entry. `writtenWhere`: money, consent, opening, sealing and hand-back
 * need the server; bay facts may be written without a network. `strikable`: whether a later entry may withdraw
 * one, and whether that takes a second person.
 */
export type KindDefinition = {
  readonly version: number
  readonly payload: z.ZodMiniType
  readonly writtenBy: readonly ('staff' | 'customer' | 'system')[]
  readonly writtenWhere: 'anywhere' | 'server'
  readonly strikable: 'yes' | 'second-person' | 'no'
  /** Holds prices or sums: a tablet gets it withheld. */
  readonly holdsMoney: boolean
}

export const kind = <Payload extends z.ZodMiniType>(
  payload: Payload,
  rest: Partial<Omit<KindDefinition, 'payload'>> = {},
) => ({
  version: 1,
  payload,
  writtenBy: ['staff'] as const,
  writtenWhere: 'anywhere' as const,
  strikable: 'yes' as const,
  holdsMoney: false,
  ...rest,
})
