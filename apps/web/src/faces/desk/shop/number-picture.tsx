import type { Bar, Picture } from '@bayledger/contract/numbers'
import { useState } from 'react'
import { Link } from 'react-router'
import { deskOrderPath } from '../../../lib/paths.ts'
import { Button } from '../../../ui/button.tsx'
import { barLengths, barWords } from './number-words.ts'
import './number-picture.css'

type Orders = readonly { readonly orderId: string; readonly number: string; readonly endedOn: string }[]

/** Few bars first: a list of forty steps opens when somebody wants it. */
const barsShown = 8

/** A table whose one column is drawn: who sees it reads bars, who hears it reads the same figures. */
export function NumberPicture({
  picture: { bars },
  counts,
  orders,
}: {
  picture: Picture
  counts: string
  orders: Orders
}) {
  const [opened, setOpened] = useState<string | null>(null)
  const [isWhole, setWhole] = useState(false)
  if (bars.length === 0) return <p>Nothing of this in these days.</p>
  const lengths = barLengths(bars)
  const shown = isWhole ? bars : bars.slice(0, barsShown)
  return (
    <>
      <table className="number-picture">
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">{counts}</th>
            <th scope="col">Their orders</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((bar, place) => (
            <tr key={bar.label}>
              <th scope="row">{bar.label}</th>
              <td>
                <DrawnBar {...(lengths[place] ?? { bar: 0, line: null })} />
                <span className="number-figure">{barWords(bar)}</span>
              </td>
              <td>
                <OrdersOf
                  bar={bar}
                  orders={orders}
                  isOpen={opened === bar.label}
                  onToggle={() => setOpened(opened === bar.label ? null : bar.label)}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {bars.length > barsShown ? (
        <Button aria-expanded={isWhole} onClick={() => setWhole(!isWhole)}>
          {isWhole ? 'Show fewer' : `Show all ${bars.length}`}
        </Button>
      ) : null}
    </>
  )
}

/** A bar, and under it a line where half of the times lie. */
function DrawnBar({ bar, line }: ReturnType<typeof barLengths>[number]) {
  const width = (part: number) => `${Math.max(0, part) * 100}%`
  return (
    <svg className="number-bar" aria-hidden="true" width="100%" height="16">
      <rect className="number-bar-ink" y="1" width={width(bar)} height="10" />
      {line === null ? null : (
        <line className="number-bar-line" x1={width(line.from)} x2={width(line.until)} y1="14" y2="14" />
      )}
    </svg>
  )
}

type OrdersOfProps = { bar: Bar; orders: Orders; isOpen: boolean; onToggle: () => void }

/** The orders behind a bar, newest first. */
function OrdersOf({ bar, orders, isOpen, onToggle }: OrdersOfProps) {
  return (
    <>
      <Button
        aria-expanded={isOpen}
        aria-label={`${bar.orders.length === 1 ? '1 order' : `${bar.orders.length} orders`}: ${bar.label}`}
        onClick={onToggle}
      >
        {bar.orders.length}
      </Button>
      {isOpen ? (
        <ul className="number-orders">
          {bar.orders.map((place) => {
            const order = orders[place]
            return order === undefined ? null : (
              <li key={order.orderId}>
                <Link to={deskOrderPath(order.orderId)}>{order.number}</Link>{' '}
                <span className="quiet">{order.endedOn}</span>
              </li>
            )
          })}
        </ul>
      ) : null}
    </>
  )
}
