import type * as z from 'zod/mini'
import { arrivalKinds } from './arrival.ts'
import { closingKinds } from './closing.ts'
import { consentKinds } from './consent.ts'
import { findingKinds } from './finding.ts'
import type { KindDefinition } from './kind.ts'
import { openingKinds } from './opening.ts'
import { workKinds } from './work.ts'

/** Every kind of entry there is. */
export const kinds = {
  ...openingKinds,
  ...arrivalKinds,
  ...findingKinds,
  ...consentKinds,
  ...workKinds,
  ...closingKinds,
} satisfies Record<string, KindDefinition>

export type Kind = keyof typeof kinds
export type PayloadOf<K extends Kind> = z.infer<(typeof kinds)[K]['payload']>

export const kindNames = Object.keys(kinds) as Kind[]

export const definitionOf = (kind: Kind): KindDefinition => kinds[kind]

export const isKind = (text: string): text is Kind => Object.hasOwn(kinds, text)
