import type * as z from 'zod/mini'
import type { Role } from './role.ts'
import type { SideKind } from './side-kinds.ts'

/** One superseded version of a kind's payload, and the pure step to the version after it. */
export type EarlierVersion = {
  readonly payload: z.ZodMiniType
  /** Total over every payload that its schema admits; gives a payload of the next version. */
  readonly toNext: (payload: never) => unknown
  /** The money that it holds inline; an order with such an entry is never sent to who may not have money. */
  readonly inlineMoney: ((payload: never) => readonly unknown[]) | null
}

/** Pairs an older schema with its step to the next version, so that the step reads what the schema admits. */
export const earlierVersion = <Payload extends z.ZodMiniType>(
  payload: Payload,
  toNext: (payload: z.infer<Payload>) => unknown,
  inlineMoney: ((payload: z.infer<Payload>) => readonly unknown[]) | null = null,
): EarlierVersion => ({ payload, toNext, inlineMoney })

/**
 * What the ledger knows about one kind of entry. `writtenWhere`: money, consent, opening, sealing and hand-back
 * need the server; bay facts may be written without a network. `strikable`: whether a later entry may withdraw
 * one, and whether that takes a second person.
 */
export type KindDefinition = {
  /** Versions before the present one, oldest first: the present version is one more than there are of them. */
  readonly earlier: readonly EarlierVersion[]
  readonly payload: z.ZodMiniType
  readonly writtenBy: readonly ('staff' | 'customer' | 'system')[]
  /** A person of the shop writes it who holds one of these; nobody does where there are none. */
  readonly roles: readonly Role[]
  /** The second person whom an entry of this kind may name holds one of these; none: it names nobody. */
  readonly agreedBy: readonly Role[]
  readonly writtenWhere: 'anywhere' | 'server'
  readonly strikable: 'yes' | 'second-person' | 'no'
  /** The kinds of side that its payload names by digest, in any of its versions; a test compares the schemas. */
  readonly sides: readonly SideKind[]
}

/** One row of the registry. Whoever adds a kind says which roles write it; everything else has a usual value. */
export const kind = <Payload extends z.ZodMiniType>(
  payload: Payload,
  rest: Pick<KindDefinition, 'roles'> & Partial<Omit<KindDefinition, 'payload' | 'roles'>>,
) => ({
  earlier: [],
  payload,
  writtenBy: ['staff'] as const,
  agreedBy: [],
  writtenWhere: 'anywhere' as const,
  strikable: 'yes' as const,
  sides: [],
  ...rest,
})
