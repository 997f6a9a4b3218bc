import type { BundleTitle } from '@bayledger/reckoning/estimate'
import * as z from 'zod/mini'
import { Digest, Id } from '../../text.ts'
import { ScopeVersion5 } from './estimate-version-5.ts'

/** What version 5 added: jobs that the customer asks for, and what the advisor adds by hand. */
const addedTitles: ReadonlySet<BundleTitle> = new Set([
  'tires',
  'spare',
  'outside-work',
  'by-hand',
  'if-stem-breaks',
])

/** The scope as version 4 knew it, and the versions before. */
export const ScopeVersion4 = ScopeVersion5.check(
  z.refine(({ bundles }) => bundles.every(({ title }) => !addedTitles.has(title)), {
    path: ['bundles'],
    error: 'an estimate of version 4 holds only what version 4 knew',
  }),
)

export const EstimateVersion4 = z.strictObject({ diagnosisId: Id, scope: ScopeVersion4, digest: Digest })
