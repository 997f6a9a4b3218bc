import type { BundleTitle, Work } from '@bayledger/reckoning/estimate'
import * as z from 'zod/mini'
import { Digest, Id } from '../../text.ts'
import { ScopeVersion4 } from './estimate-version-4.ts'

/** What version 4 added: the search for a leak without a repair in it, and the repair of what that search has found. */
const addedTitles: ReadonlySet<BundleTitle> = new Set(['leak-search', 'puncture'])
const addedWork = 'repair-puncture' satisfies Work['kind']

export const EstimateVersion3 = z.strictObject({
  diagnosisId: Id,
  scope: ScopeVersion4.check(
    z.refine(
      ({ bundles }) =>
        bundles.every(
          ({ title, works }) => !addedTitles.has(title) && works.every(({ kind }) => kind !== addedWork),
        ),
      { path: ['bundles'], error: 'an estimate of version 3 holds only what version 3 knew' },
    ),
  ),
  digest: Digest,
})

/** Version 3 to version 4: whoever sold the search for a leak had sold the repair with it. */
export const estimateToVersion4 = ({ scope, ...rest }: z.infer<typeof EstimateVersion3>) => ({
  ...rest,
  scope: {
    ...scope,
    bundles: scope.bundles.map((bundle) => ({ ...bundle, works: bundle.works.flatMap(withRepair) })),
  },
})

const withRepair = (work: Work): Work[] =>
  work.kind === 'find-leak' ? [work, { kind: addedWork, wheel: work.wheel }] : [work]
