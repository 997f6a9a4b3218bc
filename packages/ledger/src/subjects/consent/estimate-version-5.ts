import * as z from 'zod/mini'
import { Digest, Id } from '../../text.ts'
import { EstimateScope } from './estimate-scope.ts'

/** The scope as version 5 knew it, and the versions before: nothing was said of a warranty. */
export const ScopeVersion5 = EstimateScope.check(
  z.refine(({ bundles }) => bundles.every(({ covers }) => covers === undefined), {
    path: ['bundles'],
    error: 'an estimate of version 5 holds only what version 5 knew',
  }),
)

export const EstimateVersion5 = z.strictObject({ diagnosisId: Id, scope: ScopeVersion5, digest: Digest })
