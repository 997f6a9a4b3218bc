import type { OrderState } from '@bayledger/ledger/state'
import type { SheetFigure } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

/** What every form of the work needs. */
export type WorkFormProps = {
  state: OrderState
  step: Step
  onDone: () => void
  /** Opens a figure of the sheet that the step works by. */
  onFigure: (figure: SheetFigure) => void
}
export type WheelFormProps = WorkFormProps & { wheel: WheelPosition }
