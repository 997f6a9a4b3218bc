import { figureStanding } from '@bayledger/ledger/questions/figure-standing'
import type { OrderState } from '@bayledger/ledger/state'
import { figureWorth, type SheetFigure } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { figureStandingWords, figureWorthWords } from '@bayledger/wording/en/figure-worth'
import { Button } from '../../../ui/button.tsx'

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

type FigureButtonProps = {
  state: OrderState
  figure: 'relearn' | 'lifting'
  onFigure: (figure: SheetFigure) => void
}

/** Beside a step that works by a figure which nobody has verified: what it is worth, and the way to it. */
export function FigureButton({ state, figure, onFigure }: FigureButtonProps) {
  const sheet = state.sheet?.sheet
  if (!sheet || (figure === 'relearn' && sheet.relearn === null)) return null
  const worth = figureWorth(sheet, figure)
  if (worth === 'verified') return null
  return (
    <Button onClick={() => onFigure(figure)}>
      {figure === 'relearn' ? 'Procedure' : 'Lifting points'} <small>{figureWorthWords[worth]}</small>
    </Button>
  )
}
