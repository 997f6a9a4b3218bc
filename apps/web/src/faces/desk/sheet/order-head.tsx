import type { Move } from '@bayledger/ledger/questions/move'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import { moves } from '@bayledger/wording/en/moves'
import { languageNames } from '@bayledger/wording/language-names'
import { moveWords } from '@bayledger/wording/moves'
import { telephoneWords } from '@bayledger/wording/telephone'
import { useQuery } from '@tanstack/react-query'
import { useEffect } from 'react'
import { untilNamed } from '../../../features/floor/until-words.ts'
import { odometerWords } from '../../../features/ledger/odometer-words.ts'
import { customerWaitWords } from '../../../features/links/customer-wait.ts'
import { linksQuery } from '../../../features/links/queries.ts'
import { useMessages } from '../../../features/links/use-messages.ts'
import { ageMinutes, minutes } from '../../../lib/format.ts'
import { Button } from '../../../ui/button.tsx'
import { Sentence } from '../../../ui/sentence.tsx'
import { useShopClock, useTimes } from '../shop-clock.ts'
import { useFocusedTitle } from '../use-focused-title.ts'
import { nextActions, takeNextAction } from './next-action.ts'
import { OrderMore } from './order-more.tsx'
import type { OrderPart } from './order-part.ts'
import { ReadyTime, SlippingPromise } from './ready-line.tsx'

/** Who and which, what the order waits for, and the button that does it. It stays in view while the sheet scrolls. */
export function OrderHead({ order }: OrderPart) {
  const title = useFocusedTitle()
  // The button that was pressed is gone with what it did: the next Tab is at what the order waits for now.
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change of the order may take the focused button away
  useEffect(() => {
    if (document.activeElement === document.body) title.current?.focus({ preventScroll: true })
  }, [order])
  const { when } = useTimes()
  const { vehicle, customer, state } = order
  const now = new Date().toISOString()
  const odometer = state.opened?.odometer
  const isOver = state.ended !== null || state.handedBack !== null
  const waiting = nextMoves(state, now)
  const wordsOf = (move: Move) => untilNamed(moveWords(moves, move), move.until, when)
  const begins = waiting.findIndex(({ code }) => nextActions[code] !== undefined)
  return (
    <header className="order-head">
      <div className="order-title">
        <h1 ref={title} tabIndex={-1}>
          {vehicle.description}
          {vehicle.color === null ? '' : `, ${vehicle.color}`} · {customer.name}
        </h1>
        <OrderMore order={order} />
      </div>
      <p className="quiet">
        {order.number} · <span className="exact">{vehicle.plate ?? 'no plate'}</span>
        {vehicle.vin === null ? '' : ' · VIN '}
        <span className="exact">{vehicle.vin ?? ''}</span>
        {odometer
          ? ` · ${odometerWords(odometer, state.opened?.odometerConfirmed ?? false)}`
          : ' · odometer not read'}
        {customer.phone ? ` · ${telephoneWords(customer.phone)}` : ''}
        {customer.language === 'en' ? '' : ` · ${languageNames[customer.language]}`}
        {state.opened?.waitsHere && !isOver ? ' · waiting here' : ''}
        {state.opened?.promisedAt ? ` · promised ${when(state.opened.promisedAt)}` : ''}
        <ReadyTime order={order} />
      </p>
      <SlippingPromise order={order} isMain={begins < 0} />
      {waiting.map((move, index) => (
        <div key={`${move.code} ${move.wheel}`} className="order-move">
          <Sentence>
            {move.mover === 'customer' ? <CustomerWait order={order} words={wordsOf(move)} /> : wordsOf(move)}
            {move.since === null || move.mover === 'nobody' ? null : (
              <span className="quiet"> {minutes(ageMinutes(move.since, now))}</span>
            )}
          </Sentence>
          {index === begins ? <DoIt move={move} /> : null}
        </div>
      ))}
    </header>
  )
}

/** The one button that does what the order waits for, as far as the desk can. */
function DoIt({ move }: { move: Move }) {
  const action = nextActions[move.code]
  if (action === undefined) return null
  return (
    <Button look="main" onClick={() => takeNextAction(action)}>
      {action.words}
    </Button>
  )
}

/** Neither opening a link nor what becomes of a message is an entry, so both are queried here. */
function CustomerWait({ order, words }: OrderPart & { words: string }) {
  const clock = useShopClock()
  const links = useQuery(linksQuery(order.orderId))
  const messages = useMessages(order.orderId)
  const at = { now: new Date().toISOString(), clock }
  return customerWaitWords(links.data?.links ?? [], messages.data?.messages ?? [], at, words)
}
