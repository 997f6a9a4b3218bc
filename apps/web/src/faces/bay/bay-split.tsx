import type { ReactNode } from 'react'

type BaySplitProps = {
  /** Across both sides: a wheel that is not secured, a finding that stops the vehicle. */
  band?: ReactNode
  /** Left third: the plan drawing, the order, the vehicle. */
  vehicle: ReactNode
  /** Below the left third, always at the same place. */
  fixed?: ReactNode
  /** Right: one step with its pad. */
  children: ReactNode
}

/** How an order's screen is divided; in portrait the vehicle is above the step. */
export function BaySplit({ band, vehicle, fixed, children }: BaySplitProps) {
  return (
    <div className="bay-order">
      <div className="bay-bands">{band}</div>
      <div className="bay-split">
        <aside className="bay-side" aria-label="Vehicle">
          <div className="bay-vehicle">{vehicle}</div>
          {fixed ? <div className="bay-fixed">{fixed}</div> : null}
        </aside>
        <main className="bay-work">{children}</main>
      </div>
    </div>
  )
}
