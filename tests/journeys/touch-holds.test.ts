import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { freeMoor } from '../support/free-vehicles.ts'
import { writeOrderInFlight } from '../support/order-in-flight.ts'
import { allSent, button, greta, heading, ines, leaves, shows, type } from './support/bay.ts'
import { workFigures, workThrough } from './support/bay-steps.ts'
import { openBay } from './support/begin.ts'
import { setStage } from './support/stage.ts'
import { centerOf, handOf, slowNetwork, tap, touchAndHold } from './support/touch.ts'

/** An order whose wheels are torqued; the second check is to be sealed. */
let torqued = ''
const browser = setStage(null, async ({ serviceUrl }) => {
  torqued = await writeOrderInFlight(
    serviceUrl,
    { ...freeMoor, number: 'T-2603' },
    ({ draft }) => draft.kind === 'sensor.programmed',
    ({ closedBy }) => closedBy === 'torque.checked',
  )
})

/** A demo vehicle whose right rear wheel is still on. */
const vehicle = /S\. Achterberg/

const holdMilliseconds = 700

describe('a hold by finger', () => {
  let bay: Page
  const off = () => button(bay, /wheel is off · hold/)
  const title = async () => (await heading(bay).textContent()) ?? ''
  const note = () => bay.locator('.hold .button-reason')
  /** What the server has once the tablet has sent everything: nothing is closed by accident where nothing was written. */
  const entries = async () => {
    await allSent(bay)
    const orderId = /[0-9a-f-]{36}/.exec(bay.url())?.[0] ?? ''
    return (await browser().desk.entriesOf(orderId)).length
  }

  beforeAll(async () => {
    bay = await openBay(browser())
    await shows(bay, 'My vehicles')
    await tap(bay.getByRole('link', { name: vehicle }))
    await leaves(bay, 'My vehicles')
    await workThrough(bay, workFigures, /^Program/)
  })

  it('comes after a part that was withdrawn: nothing that was filled in for it is left, and nothing is filled in', async () => {
    const cells = () => bay.locator('.row-cells').textContent()
    expect(await cells()).not.toMatch(/A new ID|[0-9A-F]{4}/)
    await tap(button(bay, /^A new ID/))
    await type(bay, '5D00')
    expect(await cells()).toMatch(/A new ID.*5D00/)
    await tap(button(bay, 'History'))
    await tap(button(bay, /^Withdraw \d+: Part drawn/).first())
    await tap(button(bay, 'Wrong value'))
    await tap(button(bay, 'Withdraw it'))
    await tap(button(bay, 'Back to the step'))
    await shows(bay, /^Draw the sensor/)
    await workThrough(bay, workFigures, /^Program/)
    expect(await cells()).not.toMatch(/A new ID|5D00/)
  })

  it('comes after a figure that the ledger would refuse: it is said at once, and the step stays as it was filled in', async () => {
    await slowNetwork(bay, 700)
    await tap(button(bay, /^A new ID/))
    await bay.getByRole('textbox', { name: 'ID read back' }).fill(workFigures.newId)
    await tap(button(bay, /^Next/))
    const [was, before] = [await title(), await entries()]
    // Its last decimal would record it: the tablet knows the ledger's rules and says why not, in the ledger's words.
    await type(bay, '433.92')
    const refusal = bay.getByRole('alert').filter({ hasText: /not taken into the ledger/ })
    await refusal.waitFor()
    expect(await refusal.textContent()).toMatch(/433\.92/)
    expect(await title()).toBe(was)
    expect(await bay.locator('.row-cells').textContent()).toContain(workFigures.newId)
    await slowNetwork(bay, 0)
    expect(await entries()).toBe(before)
    await tap(bay.locator('.row-cell', { hasText: 'Frequency' }))
    await tap(button(bay, 'clear', true))
    await type(bay, workFigures.frequency)
    await tap(button(bay, /^Read back in hand/))
    await leaves(bay, was)
    await workThrough(bay, workFigures, /^Take the wheel off/)
  })

  it('that is released outside the button records nothing and says so', async () => {
    const [hand, at, before] = [await handOf(bay), await centerOf(off()), await entries()]
    await hand.down(at)
    await bay.locator('.hold-pressed').waitFor()
    await hand.move({ x: at.x, y: at.y - 200 })
    await bay.waitForTimeout(holdMilliseconds)
    await hand.up()
    expect(await note().textContent()).toMatch(/the finger left the button/)
    expect(await title()).toMatch(/^Take the wheel off/)
    expect(await entries()).toBe(before)
    await bay.waitForTimeout(350)
  })

  it('is called off by a second finger, whose tap does nothing either', async () => {
    const [hand, at, before] = [await handOf(bay), await centerOf(off()), await entries()]
    const other = await centerOf(button(bay, 'Job plan'))
    await hand.down(at, 1)
    await bay.locator('.hold-pressed').waitFor()
    await hand.down(other, 2)
    await hand.up(2)
    await bay.waitForTimeout(holdMilliseconds)
    await hand.up(1)
    expect(await note().textContent()).toMatch(/second finger/)
    expect(await title()).toMatch(/^Take the wheel off/)
    expect(await entries()).toBe(before)
    await bay.waitForTimeout(350)
  })

  it('does not begin with a second finger while the first is on the screen', async () => {
    const [hand, at, before] = [await handOf(bay), await centerOf(off()), await entries()]
    await hand.down({ x: at.x, y: at.y - 200 }, 1)
    await hand.down(at, 2)
    await bay.waitForTimeout(holdMilliseconds)
    await hand.up(2)
    await hand.up(1)
    expect(await note().textContent()).toMatch(/second finger/)
    expect(await entries()).toBe(before)
  })

  it('is called off when the screen is turned', async () => {
    const [hand, at, before] = [await handOf(bay), await centerOf(off()), await entries()]
    await hand.down(at)
    await bay.locator('.hold-pressed').waitFor()
    await bay.setViewportSize({ width: 768, height: 1024 })
    await bay.waitForTimeout(holdMilliseconds)
    await hand.up()
    await bay.setViewportSize({ width: 1024, height: 768 })
    expect(await note().textContent()).toMatch(/the screen turned/)
    expect(await title()).toMatch(/^Take the wheel off/)
    expect(await entries()).toBe(before)
    await bay.waitForTimeout(350)
  })

  it('shorter than it must be only arms the button, and a double tap confirms nothing', async () => {
    const before = await entries()
    await (await handOf(bay)).doubleTap(off())
    await button(bay, /^Press again/).waitFor()
    expect(await title()).toMatch(/^Take the wheel off/)
    expect(await entries()).toBe(before)
  })

  it('that goes on long after it counted closes this step only, and nothing under the finger', async () => {
    const [hand, at, before] = [await handOf(bay), await centerOf(off()), await entries()]
    const was = await title()
    await hand.down(at)
    await leaves(bay, was)
    const next = await title()
    // Whatever lies under the finger now was not there when it came down.
    await bay.waitForTimeout(900)
    const under = await centerOf(bay.locator('.bay-pad button').last())
    await hand.up()
    await hand.down(under)
    await bay.waitForTimeout(75)
    await hand.up()
    expect(await title()).toBe(next)
    expect(await entries()).toBe(before + 1)
  })

  it('and when the finger has left and a moment has passed, a tap counts again', async () => {
    await bay.waitForTimeout(350)
    await tap(button(bay, 'Job plan'))
    await shows(bay, /^Job plan/)
    const plan = await title()
    await tap(button(bay, 'Back to the step'))
    await leaves(bay, plan)
  })

  it('each round needs a hold of its own, with the server 700 ms away too; pressing twice with a pause does as well', async () => {
    await workThrough(bay, workFigures, /^Round at half/)
    await slowNetwork(bay, 700)
    const hand = await handOf(bay)
    const seal = () => button(bay, /hold to seal/)
    await hand.down(await centerOf(seal()))
    await shows(bay, /^Round at the figure/)
    await bay.waitForTimeout(900)
    await hand.up()
    await bay.waitForTimeout(350)
    expect(await bay.locator('.hold-resting').count()).toBe(1)
    await tap(seal())
    expect(await title()).toMatch(/^Round at the figure/)
    await bay.waitForTimeout(650)
    await tap(button(bay, /^Press again/))
    await shows(bay, /^Once more round/)
    const last = await title()
    await bay.waitForTimeout(350)
    await touchAndHold(seal())
    await leaves(bay, last)
  })

  it('of a torque check needs the PIN of whoever made it, typed for this check and no other', async () => {
    await slowNetwork(bay, 0)
    await bay.goto(`/bay/orders/${torqued}`)
    const toCheck = async () => {
      await tap(button(bay, 'Job plan'))
      await tap(button(bay, /^Second person checks/).first())
      await shows(bay, /^Second person checks/)
    }
    await toCheck()
    const check = await title()
    const before = await entries()
    const dots = () => bay.locator('.pin-dots').inputValue()
    const toPin = async () => {
      await touchAndHold(button(bay, /hold to seal/))
      await tap(button(bay, greta.name, true))
    }
    // Half of a PIN is gone when its screen is left, and the digits of another person seal nothing.
    await toPin()
    await type(bay, greta.pin.slice(0, 3))
    await tap(button(bay, 'Back', true))
    await toPin()
    expect(await dots()).toBe('')
    await type(bay, ines.pin)
    await bay.getByText('The PIN is wrong').first().waitFor()
    expect(await dots()).toBe('')
    expect(await title()).toBe(check)
    await tap(button(bay, 'Back', true))
    // The PIN that lets a withdrawal through is asked for anew by the check.
    await tap(button(bay, 'History'))
    await tap(button(bay, /^Withdraw \d+: .*off/).first())
    await tap(button(bay, 'Keep it'))
    await tap(button(bay, 'Back to the step'))
    await toCheck()
    expect(await entries()).toBe(before)
    await toPin()
    await type(bay, greta.pin)
    await leaves(bay, check)
    expect(await entries()).toBe(before + 1)
  })
})
