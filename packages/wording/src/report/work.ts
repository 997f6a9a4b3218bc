import type { TiresSeen } from '@bayledger/ledger/subjects/work/tires-seen'
import type { BalanceLeft } from '@bayledger/reckoning/wheel/balance-left'
import type { TableWording } from './table.ts'

export type ReportWorkWording = {
  readonly title: string
  readonly nothing: string
  readonly parts: TableWording<'wheel' | 'part' | 'id' | 'kit' | 'torque' | 'inside' | 'leak'>
  readonly noneFitted: string
  /** `null`: not recorded. */
  readonly kit: (of: { readonly number: string; readonly lot: string | null }) => string
  readonly part: (of: {
    readonly number: string
    readonly lot: string | null
    readonly made: string | null
  }) => string
  readonly tight: string
  readonly leaks: (where: string | null) => string
  readonly broken: (wheel: string, how: string) => string
  readonly byHand: TableWording<'wheel' | 'step' | 'recorded'>
  readonly vehicle: string
  /** `over`: grams that a side may usually have and one has more than; `null` where neither does. */
  readonly balance: (left: BalanceLeft, over: number | null) => string
  /** What was seen of the tires before a rotation. */
  readonly tires: (seen: TiresSeen) => string
}
