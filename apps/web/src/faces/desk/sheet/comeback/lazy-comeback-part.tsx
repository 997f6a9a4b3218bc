import { lazy, Suspense } from 'react'
import type { OrderPart } from '../order-part.ts'

const Loaded = lazy(async () => {
  const { ComebackPart } = await import('./comeback-part.tsx')
  return { default: ComebackPart }
})

/** Few orders are comebacks, and nobody can say why before the findings are confirmed. */
export function ComebackPart({ order }: OrderPart) {
  const { opened, diagnosis, comeback } = order.state
  if (!opened?.comebackOf || (comeback === null && !diagnosis?.confirmed)) return null
  return (
    <Suspense>
      <Loaded order={order} />
    </Suspense>
  )
}
