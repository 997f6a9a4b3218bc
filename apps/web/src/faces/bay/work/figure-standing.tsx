import { figureStanding } from '@bayledger/ledger/questions/figure-standing'
import type { OrderState } from '@bayledger/ledger/state'
import type { SheetFigure } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { figureStandingWords } from '@bayledger/wording/en/figure-worth'

/** What a figure of the sheet is worth, beside the figure itself. */
export function FigureStandingLine({ state, figure }: { state: OrderState; figure: SheetFigure }) {
  const standing = figureStanding(state, figure)
  return standing === null ? null : <span className="step-source">{figureStandingWords(standing)}</span>
}

/** The figure of the sheet from which the one of a step is taken; `null`: it is not the sheet's. */
export const sheetFigureOf = ({ figure }: Step): SheetFigure | null => {
  if (figure === null || figure.source.from === 'federal-rule') return null
  switch (figure.kind) {
    case 'torque':
      return figure.source.from === 'sheet' || figure.source.from === 'half-of-sheet'
        ? 'studTorque'
        : 'frequency'
    case 'placard':
      return 'placard'
    case 'pressure':
      return null
    case 'frequency':
      return 'frequency'
    case 'minutes':
      return figure.of === 'proof-drive' ? null : 'relearn'
  }
}
