import { expect, it, onTestFailed } from 'vitest'
import { alter } from '../support/alter.ts'
import { writeOrderInFlight } from '../support/order-in-flight.ts'
import { signInAtDesk } from './support/desk.ts'
import { setStage } from './support/stage.ts'

/** An order of which an entry is altered outside the program, before anybody opens it. */
let alteredId = ''
const browser = setStage(null, async ({ serviceUrl, adminUrl }) => {
  alteredId = await writeOrderInFlight(
    serviceUrl,
    { number: 'T-2614', plate: 'BRF 7105' },
    ({ draft }) => draft.kind === 'refusal.recorded',
  )
  await alter(
    { adminUrl },
    "update entries set written_at = written_at + interval '1 hour' where order_id = $1 and seq = $2",
    [alteredId, 9],
  )
})

it('An order that was altered outside the program says so at the desk and takes nothing; the others go on', async () => {
  onTestFailed(() => browser().picture('out'))
  const desk = await browser().open('desk', '/desk/sign-in')
  await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
  await desk.goto(`/desk/orders/${alteredId}`)
  await desk.getByText(/Entry 9 of this order does not match its seal/).waitFor()
  expect(await desk.getByRole('button', { name: 'Seal the report' }).count()).toBe(0)
  const ready = await desk.evaluate(async () => (await fetch('/readyz')).json())
  expect(ready).toMatchObject({ status: 'ready', readOnlyOrders: [{ seq: 9, code: 'chain-broken' }] })
})
