import type { OrderState } from '@bayledger/ledger/state'
import { figureWorth } from '@bayledger/reckoning/sheet'
import type { FigureRead } from '@bayledger/wording/report/torque'
import type { Spoken } from './spoken.ts'

/** Where a figure of the sheet was read, and the entry that says so. */
export const figureRead = (
  state: OrderState,
  context: Spoken,
  figure: 'placard' | 'studTorque',
): { readonly read: FigureRead; readonly entry: number | null } => {
  const sheet = state.sheet?.sheet
  const source = sheet?.sources[figure]
  const confirmed = state.figures[figure]
  return {
    read: {
      read: source
        ? { kind: context.language.report.seen.sources[source.kind], reference: source.reference }
        : null,
      confirmed: confirmed?.reference ?? null,
      worth: sheet ? figureWorth(sheet, figure) : 'missing',
    },
    entry: confirmed?.written.seq ?? state.sheet?.written.seq ?? null,
  }
}
