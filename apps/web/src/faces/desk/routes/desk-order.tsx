import { useParams } from 'react-router'

export function DeskOrderRoute() {
  const { orderId } = useParams()
  return (
    <>
      <title>Order · Bayledger desk</title>
      <h1>
        Order <span className="exact">{orderId}</span>
      </h1>
    </>
  )
}
