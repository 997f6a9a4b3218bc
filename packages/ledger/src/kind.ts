import type * as z from 'zod/mini'
import type { Role } from './role.ts'
import type { SideKind } from './side-kinds.ts'

/** One superseded version of a kind's payload, and the pure step to the version after it. */
export type EarlierVersion = {
  readonly payload: z.ZodMiniType
  /** Takes every payload that its schema admits and returns a payload of the next version. */
  readonly toNext: (payload: never) => unknown
  /** The money that it holds inline. An order with such an entry is never sent to anyone who may not see money. */
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
 * need the server; facts from the bay may be written without a network. `strikable`: whether a later entry may withdraw
 * one, and whether that takes a second person.
 */
export type KindDefinition = {
  /** Earlier versions, oldest first. The present version's number is one more than their count. */
  readonly earlier: readonly EarlierVersion[]
  readonly payload: z.ZodMiniType
  readonly writtenBy: readonly ('staff' | 'customer' | 'system')[]
  /** A person of the shop who holds one of these may write it. Empty: no person may. */
  readonly roles: readonly Role[]
  /** The second person of an entry of this kind holds one of these. Empty: the kind names no second person. */
  readonly agreedBy: readonly Role[]
  readonly writtenWhere: 'anywhere' | 'server'
  readonly strikable: 'yes' | 'second-person' | 'no'
  /** The kinds of side that its payload names by digest, in any of its versions; a test compares the schemas. */
  readonly sides: readonly SideKind[]
}

/** One row of the registry. A new kind must say which roles write it; everything else has a default. */
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
