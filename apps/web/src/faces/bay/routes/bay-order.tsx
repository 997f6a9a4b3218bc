import { useParams } from 'react-router'
import { BaySplit } from '../bay-split.tsx'

export function BayOrderRoute() {
  const { orderId } = useParams()
  return (
    <>
      <title>Order · Bayledger bay</title>
      <BaySplit vehicle={<p className="exact">{orderId}</p>} step={<h1>Order</h1>} />
    </>
  )
}
