import type { ReactNode } from 'react'

type BaySplitProps = {
  /** Left third: the plan drawing, the order, the vehicle, and the loud band. */
  vehicle: ReactNode
  /** Right: one step. */
  step: ReactNode
  /** Rises from the bottom of the step's side: pads, and the step's one wide button. */
  pad?: ReactNode
}

/** How every screen of the bay is divided; in portrait the vehicle stands above the step. */
export function BaySplit({ vehicle, step, pad }: BaySplitProps) {
  return (
    <div className="bay-split">
      <aside className="bay-vehicle" aria-label="Vehicle">
        {vehicle}
      </aside>
      <main className="bay-work">
        <div className="bay-step">{step}</div>
        {pad === undefined ? null : <div className="bay-pad">{pad}</div>}
      </main>
    </div>
  )
}
