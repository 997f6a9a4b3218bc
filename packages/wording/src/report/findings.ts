import type { ComebackCause } from '@bayledger/reckoning/money/line-cover'
import type { ObservedCode } from '../observations.ts'

export type ReportFindingsWording = {
  readonly title: string
  readonly notIssued: string
  readonly computed: (ruleSet: string, confirmation: string) => string
  readonly confirmation: {
    readonly open: string
    readonly agrees: (who: string) => string
    readonly differs: (who: string, finding: string, reason: string) => string
  }
  /** Why the vehicle came back after our work. */
  readonly comeback: {
    readonly cause: (cause: string) => string
    /** Something else has the words of whoever recorded it. */
    readonly causes: Readonly<Record<Exclude<ComebackCause, 'something-else'>, string>>
    readonly notRecorded: string
  }
  /** The title of a finding and how sure it is. */
  readonly named: (title: string, confidence: string) => string
  readonly next: (action: string) => string
  readonly unchecked: string
  readonly notPossible: (field: string, why: string) => string
  /** What a reason saw; IDs and what a person typed are printed as they are. */
  readonly values: Readonly<Record<ObservedCode | 'yes' | 'no' | 'not-checked', string>>
  /** Units that are words; the others are signs, the same in every language. */
  readonly units: Readonly<Record<'months' | 'years', string>>
}
