import type * as z from 'zod/mini'
import type { KindDefinition } from './kind.ts'
import { arrivalKinds } from './subjects/arrival/kinds.ts'
import { closingKinds } from './subjects/closing/kinds.ts'
import { comebackKinds } from './subjects/comeback/kinds.ts'
import { consentKinds } from './subjects/consent/kinds.ts'
import { findingKinds } from './subjects/findings/kinds.ts'
import { messageKinds } from './subjects/messages/kinds.ts'
import { openingKinds } from './subjects/opening/kinds.ts'
import { photoKinds } from './subjects/photos/kinds.ts'
import { torqueKinds } from './subjects/torque/kinds.ts'
import { troubleKinds } from './subjects/trouble/kinds.ts'
import { workKinds } from './subjects/work/kinds.ts'

/** Every kind of entry there is. */
export const kinds = {
  ...openingKinds,
  ...arrivalKinds,
  ...findingKinds,
  ...comebackKinds,
  ...consentKinds,
  ...workKinds,
  ...torqueKinds,
  ...closingKinds,
  ...photoKinds,
  ...messageKinds,
  ...troubleKinds,
} satisfies Record<string, KindDefinition>

export type Kind = keyof typeof kinds
export type PayloadOf<K extends Kind> = z.infer<(typeof kinds)[K]['payload']>

export const kindNames = Object.keys(kinds) as Kind[]

export const definitionOf = (kind: Kind): KindDefinition => kinds[kind]

/** The present version of a kind. */
export const versionOf = (kind: Kind): number => kinds[kind].earlier.length + 1

export const isKind = (text: string): text is Kind => Object.hasOwn(kinds, text)
