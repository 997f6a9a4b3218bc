import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { readAndConfirm } from '../support/read-and-confirm.ts'
import { violationsOn } from './support/accessible.ts'
import { button } from './support/bay.ts'
import { customerLink, issueEstimate, signInAtDesk } from './support/desk.ts'
import { setStage } from './support/stage.ts'

let serviceUrl = ''
const stage = setStage(null, async (database) => {
  serviceUrl = database.serviceUrl
})

let desk: Page
let orderId: string
beforeAll(async () => {
  desk = await stage().open('desk', '/desk/sign-in')
  await signInAtDesk(desk, 'greta', 'brindle-falls-greta')
})

describe('a vehicle that comes back after our work', () => {
  it('is joined to its order by one key, and inspecting is free', async () => {
    const { hits } = (await stage().desk.get('/api/search?q=T-2605')) as { hits: { vehicleId: string }[] }
    await desk.goto(`/desk/vehicles/${hits[0]?.vehicleId}`)
    await desk.getByRole('button', { name: /^It came back after T-2605/ }).waitFor()
    await desk.keyboard.press('b')
    await desk.getByText('Comeback of T-2605.').waitFor()
    await desk.getByLabel('The complaint, in the customer’s own words').fill('The light is on again.')
    await desk.getByLabel('Stays on', { exact: true }).check()
    await desk.getByLabel(/I asked for each of these by name/).check()
    await desk.getByLabel('Waits here').check()
    await desk.getByLabel('Odometer').fill('47400')
    await desk.getByLabel('Tamber Street', { exact: true }).check()
    await desk.getByLabel('Inspecting every wheel and the vehicle').check()
    await desk.getByLabel('The owner', { exact: true }).check()
    await button(desk, 'Open the order').click()
    await desk.waitForURL(/\/desk\/orders\//)
    orderId = desk.url().split('/').at(-1) ?? ''
  })

  it('has no price before its cause is recorded; then the estimate says what the warranty covers', async () => {
    await readAndConfirm(serviceUrl, orderId, 'T-2605')
    await desk.getByText(/^Record the cause of the comeback first/).waitFor()
    await button(desk, 'Record it').waitFor()
    const part = desk.getByRole('region', { name: 'Comeback' })
    await part.getByText('relearn').waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await part.getByLabel('Our work').check()
    await button(desk, 'Record the cause').click()
    await button(desk, 'Correct the cause').waitFor()
    const preview = desk.getByRole('region', { name: 'As the customer reads it' })
    await preview.getByText(/^Covered by our warranty: \$0\.00 \(would be \$26\.00\)/).waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await issueEstimate(desk)
  })

  it('is read out by telephone and read on a phone as free, with what it would cost', async () => {
    await button(desk, 'Decide by telephone').click()
    await desk
      .getByText(/Our warranty covers \$26\.00 of this, before tax\./)
      .first()
      .waitFor()
    await desk.keyboard.press('Escape')
    const link = new URL(await customerLink(desk))
    const phone = await stage().open('customer', `${link.pathname}${link.hash}`)
    await phone.getByText(/^Covered by our warranty: \$0\.00 \(would be \$26\.00\)/).waitFor()
    await phone.getByText('Our warranty covers $26.00 of this, before tax.').waitFor()
    expect(await violationsOn(phone)).toEqual([])
  })
})
