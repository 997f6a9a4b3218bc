import type { OvertakenRound } from '@bayledger/ledger/state'
import type { FigureWorth } from '@bayledger/reckoning/sheet'
import type { TableWording } from './table.ts'

type Fastener = 'nut' | 'bolt'

/** Where a figure of the sheet comes from: `read` as the sheet says, `confirmed` as it was read on this vehicle. */
export type FigureRead = {
  readonly read: { readonly kind: string; readonly reference: string } | null
  readonly confirmed: string | null
  /** What it was worth on the sheet that the order used. */
  readonly worth: FigureWorth
}

export type ReportTorqueWording = {
  readonly title: string
  readonly noWheelOff: string
  readonly figure: (source: FigureRead) => string
  readonly rounds: TableWording<'wheel' | 'round' | 'setTo' | 'clicked' | 'moved' | 'wrench' | 'who'>
  readonly round: Readonly<Record<OvertakenRound['round'] | 'own-check' | 'after-miles', string>>
  /** A round that no longer counts, with why. */
  readonly stale: (round: string, why: 'came-off-again' | 'overtaken') => string
  readonly notDone: string
  readonly clicked: (clicked: number, total: number, fastener: Fastener) => string
  readonly moved: (places: readonly number[], fastener: Fastener) => string
  /** How long the rounds took and when they were checked; at least one of the two is known. */
  readonly clock: (of: {
    readonly took: string | null
    readonly checkedAfterMinutes: number | null
  }) => string
  readonly byTheClock: (wheel: string, clock: string) => string
  readonly checkedAlone: (wheels: readonly string[]) => string
  readonly wrench: (of: {
    readonly code: string
    readonly dueOn: string
    readonly clicks: string
    readonly low: string
    readonly high: string
    readonly unit: string
  }) => string
}
