import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { tabletId } from '../../prisma/seeds/demo/places.ts'
import { nailCustomer as customer, writeNailOrder } from '../support/nail-order.ts'
import { type OrderWriter, openOrderWriter } from '../support/order-in-flight.ts'
import { writeOwnOrder } from '../support/own-order.ts'
import { allSent, button, leaves, shows, type } from './support/bay.ts'
import { workFigures, workThrough } from './support/bay-steps.ts'
import { openBay, openDesk } from './support/begin.ts'
import { decideAndSign } from './support/customer.ts'
import { customerLink, issueEstimate, openOrder } from './support/desk.ts'
import { faultsOf } from './support/screen-faults.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

/** A nail was seen in the right rear tire: the customer has agreed to the search, and nothing is done yet. */
const minutesBehind = 30
let orderId = ''
let writer: OrderWriter
const browser = setStage(minutesBehind, async ({ serviceUrl }) => {
  orderId = await writeOwnOrder(serviceUrl, writeNailOrder)
  writer = await openOrderWriter(serviceUrl)
})
afterAll(() => writer.close())

let desk: Page
let bay: Page
beforeAll(async () => {
  desk = await openDesk(browser())
  bay = await openBay(browser())
})

/** The desk offers what is priced now, and the customer agrees to all of it on the phone. */
const offerAndAgree = async (title: string): Promise<void> => {
  await desk.getByText(title).first().waitFor()
  await issueEstimate(desk)
  const link = await customerLink(desk)
  const phone = await browser().open('customer', new URL(link).pathname + new URL(link).hash)
  await phone.getByText(title).first().waitFor()
  await decideAndSign(phone, customer)
  await phone.close()
}

/** What is off, what is parked and what is dangerous are all said, and no size of screen cuts a button for it. */
const looksUnderThreeBands = async (): Promise<void> => {
  for (const size of [
    { width: 1024, height: 768 },
    { width: 1280, height: 800 },
    { width: 800, height: 1280 },
  ]) {
    await bay.setViewportSize(size)
    expect(await bay.locator('.loud-band').count()).toBe(3)
    expect(
      await faultsOf(bay),
      `${await bay.locator('h1').first().textContent()}, ${size.width} wide`,
    ).toEqual([])
  }
  await bay.setViewportSize({ width: 1024, height: 768 })
}

describe('a nail, and a stud that breaks while the wheel comes off', () => {
  it('the stud parks the wheel by touch, is the desk’s to offer, and a Yes brings the repair into the plan', async () => {
    onTestFailed(() => browser().picture('out'))
    await tap(bay.getByRole('link', { name: new RegExp(customer) }))
    await leaves(bay, 'My vehicles')
    await workThrough(bay, workFigures, /^Take the wheel off/)

    await tap(button(bay, 'Not right', true))
    await shows(bay, 'What is not right at the right rear wheel?')
    await tap(button(bay, 'A stud or bolt is damaged'))
    await tap(button(bay, 'Park the right rear wheel'))
    const band = bay.getByText(/The right rear wheel is parked: a stud or bolt is damaged/)
    await band.waitFor()
    expect(await band.textContent()).toContain("waits for the customer's answer")
    await shows(bay, /readings say/)
    await tap(button(bay, /confirm the findings/))
    await tap(button(bay, 'Job plan'))
    await tap(button(bay, 'Take the wheel off: right rear'))
    await bay
      .locator('.bay-step')
      .getByText(/parked: a stud or bolt is damaged/)
      .waitFor()

    await openOrder(desk, customer)
    await desk
      .getByText(/Say to the customer: We found a damaged stud or bolt at the right rear wheel/)
      .waitFor()
    await offerAndAgree('Replace damaged studs or nuts, right rear')

    await bay.getByText(/It waits for the repair/).waitFor()
  })

  it('the hole parks the wheel too, has its price only now, and is plugged from inside after the customer’s Yes', async () => {
    onTestFailed(() => browser().picture('out'))
    const done = await workThrough(bay, workFigures, /^Look inside/)
    expect(done).not.toContainEqual(expect.stringMatching(/^Repair what leaks/))
    await tap(button(bay, /^Foreign body/))
    await tap(button(bay, 'None', true))
    await tap(button(bay, 'A hole', true))
    await tap(button(bay, /^Crown/))
    // A slip of the finger is answered at once, and nothing is recorded.
    await type(bay, '60')
    await bay.getByText(/60 mm cannot be: allowed is 0.5 to 50 mm/).waitFor()
    await tap(button(bay, 'clear'))
    await type(bay, '4')
    await tap(button(bay, /^Next/))
    await type(bay, '10')
    await tap(button(bay, /^Next/))
    await tap(button(bay, /^None, or well apart/))
    await tap(button(bay, 'No other hole'))
    const band = bay.getByText(/The right rear wheel is parked: a hole that may be repaired/)
    await band.waitFor()
    await bay.locator('.loud-band ~ .loud-band ~ .loud-band').waitFor()
    await shows(bay, /readings say/)
    await looksUnderThreeBands()
    await tap(button(bay, /confirm the findings/))
    await tap(button(bay, 'Not right', true))
    await shows(bay, 'What is not right at the right rear wheel?')
    await looksUnderThreeBands()
    await tap(button(bay, 'Nothing: back'))

    await desk
      .getByText(/Say to the customer: We looked inside the right rear tire and found a hole/)
      .waitFor()
    await offerAndAgree('Repair the puncture, right rear')
    await bay.getByText(/a hole that may be repaired\. It waits for the repair/).waitFor()
    await workThrough(bay, workFigures, /^Repair what leaks/)
    await tap(button(bay, /plug and patch/i))
    await band.waitFor({ state: 'detached' })
  })

  it('the stud is renewed before the wheel goes on, and nothing is parked any more', async () => {
    onTestFailed(() => browser().picture('out'))
    await workThrough(bay, workFigures, /^Renew the damaged/)
    await tap(button(bay, 'stud and nut renewed'))
    await bay.getByText(/wheel is parked/).waitFor({ state: 'detached' })
  })

  it('the tire is closed on another tablet; the wheel is torqued and checked, and the drive proves that the light stays off', async () => {
    onTestFailed(() => browser().picture('out'))
    await allSent(bay)
    await writer.workOn(orderId, ({ closedBy }) => closedBy === 'studs.torqued', {
      person: people.ines,
      deviceId: tabletId(4),
      minutesBehind,
    })
    await shows(bay, /^(Which torque wrench|Round at half)/)
    const done = await workThrough(bay, workFigures)
    expect(done.filter((title) => /^(Second person checks|Proof drive)/.test(title))).toHaveLength(2)
    await desk
      .locator('#proof')
      .getByText(/light was off at the end of 23 minutes/)
      .waitFor()
    await desk
      .getByText(/Note the payment and seal the report/)
      .first()
      .waitFor()
  })
})
