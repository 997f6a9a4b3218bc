import { lazy, Suspense } from 'react'
import type { OrderPart } from '../order-part.ts'

const Loaded = lazy(async () => {
  const { ShortfallLines } = await import('./shortfall-lines.tsx')
  return { default: ShortfallLines }
})

/** Nothing is lacking before a tire was gauged. */
export function ShortfallLines({ order }: OrderPart) {
  const isGauged = Object.values(order.state.arrival.wheels).some(({ gauge }) => gauge !== null)
  if (!isGauged) return null
  return (
    <Suspense>
      <Loaded order={order} />
    </Suspense>
  )
}
