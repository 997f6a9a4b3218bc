import {
  type FigureWorth,
  figuresOf,
  figureWorth,
  SafetyFigure,
  type SheetFigure,
} from '@bayledger/reckoning/sheet'
import type { OrderState } from '../state.ts'

/** What a figure is worth on its sheet, and where a second person read the same for this vehicle. */
export type FigureStanding = { readonly worth: FigureWorth; readonly confirmed: string | null }

/** What a figure of the order's sheet is worth; `null`: no sheet yet, or the vehicle has no such figure. */
export const figureStanding = (state: OrderState, figure: SheetFigure): FigureStanding | null => {
  const sheet = state.sheet?.sheet
  if (!sheet || !figuresOf(sheet).includes(figure)) return null
  const safety = SafetyFigure.options.find((one) => one === figure)
  return {
    worth: figureWorth(sheet, figure),
    confirmed: (safety && state.figures[safety]?.reference) ?? null,
  }
}
