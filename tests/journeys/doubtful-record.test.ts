import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { alter } from '../support/alter.ts'
import { runClocksTogether } from '../support/browser.ts'
import { freeMoor } from '../support/free-vehicles.ts'
import { writeOrderInFlight } from '../support/order-in-flight.ts'
import { runOutsideTool } from '../support/run-outside-tool.ts'
import { button, ines, leaves, shows, type, unlock } from './support/bay.ts'
import { workFigures, workThrough } from './support/bay-steps.ts'
import { openBay, openDesk } from './support/begin.ts'
import { openOrder } from './support/desk.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

/** An order of which an entry is altered outside the program, before anybody opens it. */
let alteredId = ''
const browser = setStage(null, async ({ serviceUrl, adminUrl }) => {
  alteredId = await writeOrderInFlight(
    serviceUrl,
    { ...freeMoor, number: 'T-2614' },
    ({ draft }) => draft.kind === 'refusal.recorded',
  )
  await alter(
    { adminUrl },
    "update entries set written_at = written_at + interval '1 hour' where order_id = $1 and seq = $2",
    [alteredId, 9],
  )
})

/** A demo vehicle of whose proof drive 13 of 20 minutes are driven. */
const vehicle = /C\. Abernethy-Wu/
const customer = 'C. Abernethy-Wu'

const minute = 60_000
const aheadMinutes = 47

describe('a tablet whose clock is far ahead', () => {
  let desk: Page
  let bay: Page
  let asked = ''
  const question = () => desk.getByLabel('When was it really done, and how do you know?')
  const seal = () => desk.getByRole('button', { name: /^Seal the report/ })

  beforeAll(async () => {
    desk = await openDesk(browser())
    bay = await openBay(browser())
    await shows(bay, 'My vehicles')
  })

  it('writes down a drive that is kept, and the work goes on', async () => {
    onTestFailed(() => browser().picture('out'))
    await runClocksTogether(bay.context(), -aheadMinutes)
    await bay.reload()
    await tap(bay.getByRole('link', { name: vehicle }))
    await type(bay, '71947')
    await tap(button(bay, 'Leave: start the clock'))
    await button(bay, 'Back: stop the clock').waitFor()
    await bay.clock.fastForward(8 * minute)
    await unlock(bay, ines)
    await tap(button(bay, 'Back: stop the clock'))
    await type(bay, '71953')
    await tap(button(bay, /^Next/))
    await tap(button(bay, 'Off', true))
    await tap(button(bay, /^Lights and goes/))
    await shows(bay, /^See that the vehicle learned/)
    expect(await bay.getByRole('alert').count()).toBe(0)
    // Somebody sets the tablet's clock right; whatever follows raises no question.
    await bay.context().unroute('**/api/devices/current')
    await bay.clock.setSystemTime(Date.now())
    await tap(button(bay, /^Has learned/))
    await leaves(bay, 'See that the vehicle learned its sensors')
    await workThrough(bay, workFigures)
  })

  it('leaves a question to the desk for the drive’s beginning and one for its end, and the report waits for both answers', async () => {
    onTestFailed(() => browser().picture('out'))
    await openOrder(desk, customer)
    await question().nth(1).waitFor()
    expect(await question().count()).toBe(2)
    asked =
      (await desk
        .getByText(/A device wrote an entry at/)
        .last()
        .textContent()) ?? ''
    const [written = '', received = ''] = asked.match(/\d{1,2}:\d\d/g) ?? []
    // The entry was on its way for a while, and seconds are not said.
    expect(minutesBetween(received, written)).toBeGreaterThan(aheadMinutes - 5)
    await desk.getByRole('radio', { name: 'card', exact: true }).check()
    await button(desk, 'Note the payment').click()
    await button(desk, 'Yes, note it').click()
    await desk.getByText('Nothing is owed.').waitFor()
    await seal().focus()
    await desk.keyboard.press('Enter')
    expect(await desk.getByRole('link', { name: /Sealed report/ }).count()).toBe(0)
  })

  it('is answered by keyboard; the questions are gone, the report is sealed and prints both times', async () => {
    onTestFailed(() => browser().picture('out'))
    await button(desk, 'Settle the time').first().focus()
    await desk.keyboard.press('Enter')
    await desk.getByText('Write down what you found out.').first().waitFor()
    for (const left of [1, 0]) {
      await question().first().focus()
      await desk.keyboard.type('Ines came back at noon; her tablet had been set by hand.')
      await desk.keyboard.press('Tab')
      await desk.keyboard.press('Enter')
      await expect.poll(() => question().count()).toBe(left)
    }
    await seal().focus()
    await desk.keyboard.press('Enter')
    const link = desk.getByRole('link', { name: /Sealed report/ })
    await link.waitFor({ timeout: 60_000 })
    const [download] = await Promise.all([desk.waitForEvent('download'), link.click()])
    const text = runOutsideTool('pdftotext', ['-layout', await download.path(), '-']).output
    expect(text).toMatch(new RegExp(`drive done\\s+${moment}\\s+${moment}`))
  })
})

it('An order that was altered outside the program says so at the desk and takes nothing; the others go on', async () => {
  onTestFailed(() => browser().picture('out'))
  const desk = await browser().open('desk', `/desk/orders/${alteredId}`)
  await desk.getByText(/Entry 9 of this order does not match its seal/).waitFor()
  expect(await desk.getByRole('button', { name: 'Seal the report' }).count()).toBe(0)
  const ready = await desk.evaluate(async () => (await fetch('/readyz')).json())
  expect(ready).toMatchObject({ status: 'ready', readOnlyOrders: [{ seq: 9, code: 'chain-broken' }] })
})

const moment = '\\w+ \\d+, \\d{4}, \\d+:\\d\\d\\s[AP]M'

const minutesBetween = (from: string, to: string): number => {
  const at = (time: string) => {
    const [hour = 0, minutes = 0] = time.split(':').map(Number)
    return hour * 60 + minutes
  }
  return (at(to) - at(from) + 24 * 60) % (24 * 60)
}
