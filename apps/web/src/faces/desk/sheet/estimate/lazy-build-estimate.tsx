import { lazy, Suspense } from 'react'
import type { OrderPart } from '../order-part.ts'

const Loaded = lazy(async () => {
  const { BuildEstimate } = await import('./build-estimate.tsx')
  return { default: BuildEstimate }
})

/** Estimates are written rarely, so that what writes them is loaded when one is. */
export function BuildEstimate(props: OrderPart & { onIssued?: () => void }) {
  return (
    <Suspense fallback={<p role="status">The prices are being loaded.</p>}>
      <Loaded {...props} />
    </Suspense>
  )
}
