import type { SafetyFigure, SpecificationSheet } from '@bayledger/reckoning/sheet'
import { type ReactNode, Suspense, useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { useSignedIn } from '../session/signed-in.ts'
import { VerifyFigure } from './lazy-figures.tsx'
import { OwnFigure } from './own-figure.tsx'

type FigureByAnotherProps = {
  orderId: string
  sheet: SpecificationSheet
  figure: SafetyFigure
  title: string
  /** The title where whoever is at the tablet entered it. */
  ownTitle: string
  shown: ReactNode
  onDone: () => void
  /** Confirming it for this vehicle alone, with the way to verify it for every such vehicle beside it. */
  children: (head: { readonly beside?: ReactNode }) => ReactNode
}

/**
 * A figure of the sheet that nobody has verified yet. Whoever entered it hands the tablet over; anybody else confirms it for this
 * vehicle, or verifies it on the sheet for every vehicle of its kind.
 */
export function FigureByAnother({ ownTitle, shown, children, ...of }: FigureByAnotherProps) {
  const person = useSignedIn()
  const [isForAll, setForAll] = useState(false)
  const source = of.sheet.sources[of.figure]
  if (source?.enteredBy === person?.staffId) return <OwnFigure {...of} title={ownTitle} shown={shown} />
  if (isForAll)
    return (
      <Suspense fallback={null}>
        <VerifyFigure {...of} onBack={() => setForAll(false)} />
      </Suspense>
    )
  // What somebody remembers names no source at which a second person could read it.
  const mayVerify = source != null && source.kind !== 'memory'
  return children(
    mayVerify
      ? { beside: <Button onClick={() => setForAll(true)}>Verify it for every such vehicle</Button> }
      : {},
  )
}
