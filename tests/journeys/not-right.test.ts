import { describe, expect, it, onTestFailed } from 'vitest'
import { button, shows } from './support/bay.ts'
import { workFigures, workThrough } from './support/bay-steps.ts'
import { openBay, openDesk } from './support/begin.ts'
import { decideAndSign } from './support/customer.ts'
import { customerLink, enrollmentCode, issueEstimate, openOrder } from './support/desk.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

const browser = setStage()

/** A demo vehicle whose right rear wheel is still on. */
const customer = 'S. Achterberg'

describe('a stud that breaks while a wheel comes off', () => {
  it('parks the wheel by touch, is the desk’s to offer, and a Yes brings the repair into the plan', async () => {
    onTestFailed(() => browser().picture('out'))
    const desk = await openDesk(browser())
    const bay = await openBay(browser(), await enrollmentCode(desk))
    await tap(bay.getByRole('link', { name: new RegExp(customer) }))
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
    await desk.getByText('Renew damaged studs or nuts, right rear').first().waitFor()
    await issueEstimate(desk)
    const link = await customerLink(desk)
    const phone = await browser().open('customer', new URL(link).pathname + new URL(link).hash)
    await phone.getByText('Renew damaged studs or nuts, right rear').first().waitFor()
    await decideAndSign(phone, customer)

    await bay.getByText(/It waits for the repair/).waitFor()
    await workThrough(bay, workFigures, /^Renew the damaged/)
    await tap(button(bay, 'stud and nut renewed'))
    await band.waitFor({ state: 'detached' })
  })
})
