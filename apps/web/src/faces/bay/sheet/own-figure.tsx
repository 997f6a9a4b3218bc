import type { SafetyFigure, SpecificationSheet } from '@bayledger/reckoning/sheet'
import { type ReactNode, Suspense, useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { VerifyFigure } from './lazy-figures.tsx'

type OwnFigureProps = {
  orderId: string
  sheet: SpecificationSheet
  figure: SafetyFigure
  title: string
  /** The figure as it was entered. */
  shown: ReactNode
  onDone: () => void
}

/** Whoever entered the figure hands the tablet to somebody else, who verifies it on the sheet, for every such vehicle. */
export function OwnFigure({ orderId, sheet, figure, title, shown, onDone }: OwnFigureProps) {
  const [isHanded, setHanded] = useState(false)
  if (!isHanded)
    return (
      <StepScreen
        title={title}
        how="You entered this figure yourself. Somebody else reads it at its source and confirms it."
        figure={shown}
        pad={
          <Button look="wide" onClick={() => setHanded(true)}>
            Second person: confirm it
          </Button>
        }
      />
    )
  return (
    <Suspense fallback={null}>
      <VerifyFigure
        orderId={orderId}
        sheet={sheet}
        figure={figure}
        title={title}
        onBack={() => setHanded(false)}
        onDone={onDone}
      />
    </Suspense>
  )
}
