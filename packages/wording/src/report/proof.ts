import type { OrderState } from '@bayledger/ledger/state'
import type { LightSeen } from './arrival.ts'
import type { TableWording } from './table.ts'

type Relearn = NonNullable<OrderState['relearn']>
type Drive = OrderState['drives'][number]
export type RelearnResult = Relearn['result']

export type ReportProofWording = {
  readonly title: string
  readonly verdict: (word: string, words: string) => string
  /** `confirmed`: wheels by name; `took`: a clause on the time, or nothing. */
  readonly relearn: (of: {
    readonly method: Relearn['method']
    readonly result: RelearnResult
    readonly confirmed: readonly string[]
    readonly took: string
    readonly by: string
    readonly moment: string
  }) => string
  readonly noRelearn: string
  readonly light: (seen: (LightSeen & { readonly took: string }) | null) => string
  readonly noDrive: string
  readonly drives: TableWording<'by' | 'driven' | 'clock' | 'odometerOut' | 'odometerIn' | 'light' | 'key'>
  readonly notTimed: string
  readonly lightOff: string
  readonly lamp: Readonly<Record<Drive['lampCheckAfter'], string>>
  readonly odometerReadTwice: string
  readonly slept: string
  readonly doubted: (typed: string, clock: string) => string
  readonly left: (by: string, moment: string) => string
}
