import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { freeLinnet, freeMoor } from '../support/free-vehicles.ts'
import { writeOwnOrder } from '../support/own-order.ts'
import { writeLowTire, writeWantsPlainStems } from '../support/revised-orders.ts'
import { violationsOn } from './support/accessible.ts'
import { button, leaves, shows } from './support/bay.ts'
import { workFigures, workThrough } from './support/bay-steps.ts'
import { openBay, openDesk } from './support/begin.ts'
import { openOrder } from './support/desk.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

const browser = setStage(null, async ({ serviceUrl }) => {
  await writeOwnOrder(serviceUrl, writeLowTire)
  await writeOwnOrder(serviceUrl, writeWantsPlainStems)
})

let desk: Page
beforeAll(async () => {
  desk = await openDesk(browser())
})

describe('a stem that is seized, found in the bay', () => {
  let bay: Page
  const band = () =>
    bay.locator('.loud-band', { hasText: 'The left rear wheel is parked: something is seized' })
  beforeAll(async () => {
    bay = await openBay(browser())
  })

  it('parks the wheel by touch and goes back to the desk', async () => {
    onTestFailed(() => browser().picture('out'))
    await tap(bay.getByRole('link', { name: new RegExp(freeMoor.customer) }))
    await leaves(bay, 'My vehicles')
    await workThrough(bay, workFigures, /^Look inside/)
    await tap(button(bay, 'Sound'))
    await tap(button(bay, 'None', true))
    await tap(button(bay, 'No hole'))
    await leaves(bay, 'Look inside the tire: left rear')
    await workThrough(bay, workFigures, /^Renew the stem parts/)
    await tap(button(bay, 'Not right', true))
    await shows(bay, 'What is not right at the left rear wheel?')
    await tap(button(bay, 'Something is seized'))
    await tap(button(bay, 'Park the left rear wheel'))
    await band().waitFor()
    expect(await band().textContent()).toContain("waits for the customer's answer")
  })

  it('brings a new version with its difference, in which the open tire is not paid for twice', async () => {
    onTestFailed(() => browser().picture('out'))
    await openOrder(desk, freeMoor.customer)
    await desk.getByText(/Say to the customer: A part at the left rear wheel is seized/).waitFor()
    await button(desk, 'New version').click()
    const dialog = desk.getByRole('dialog')
    await dialog.getByLabel('Job that the customer asks for').selectOption({ label: 'New sensors' })
    for (const name of ['left front', 'right front', 'right rear'])
      await dialog.getByRole('checkbox', { name, exact: true }).uncheck()
    await button(desk, 'Add this job').click()
    // 68.00 and its tax 4.25, the relearn 39.00 and its supplies 1.95, the disposal 2.00: the demo's prices, worked by hand.
    await dialog
      .getByRole('region', { name: 'Against version 1' })
      .getByText(/^New: New sensor, left rear, \$115\.20/)
      .waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await button(desk, 'Issue this estimate').click()
    await dialog.waitFor({ state: 'detached' })
  })

  it('is decided again by telephone, and the work goes on with the new sensor', async () => {
    onTestFailed(() => browser().picture('out'))
    await button(desk, 'Decide by telephone').click()
    const dialog = desk.getByRole('dialog')
    await dialog
      .getByRole('group', { name: /^New sensor, left rear/ })
      .getByRole('radio', { name: 'Yes' })
      .check()
    await dialog.getByLabel('The owner', { exact: true }).check()
    await dialog.getByLabel('Number called').fill('555 0100 204')
    await dialog.getByLabel('The answer, in their words').fill('Then put a new one in.')
    await button(desk, 'Record the decision').click()
    await dialog.waitFor({ state: 'detached' })
    await band().waitFor({ state: 'detached' })
    const done = await workThrough(bay, workFigures, /^Read the sensor before/)
    expect(done).toContainEqual(expect.stringMatching(/^Draw the sensor/))
    expect(done).toContainEqual(expect.stringMatching(/^Old sensor out/))
    await bay.close()
  })
})

describe('plain stems in place of sensors that work', () => {
  it('are refused before the customer is asked: the sentence names the wheels and what may be done', async () => {
    onTestFailed(() => browser().picture('out'))
    await openOrder(desk, freeLinnet.customer)
    await desk.getByLabel('Job that the customer asks for').selectOption({ label: 'New valve stems' })
    await button(desk, 'Add this job').click()
    await button(desk, 'Issue this estimate').click()
    const refused = desk.locator('#estimate').getByRole('alert')
    await refused
      .getByText(/A plain stem would silence a sensor that is not known to be dead: left front, right front/)
      .waitFor()
    expect(await refused.textContent()).toMatch(/Trigger it twice, name the stem .*, or decline the work\./)
    expect(await violationsOn(desk)).toEqual([])
  })

  it('end the order with the reason, and nothing of them was ever on an estimate', async () => {
    onTestFailed(() => browser().picture('out'))
    const orderId = new URL(desk.url()).pathname.split('/').at(-1) ?? ''
    await button(desk, 'More').click()
    await button(desk, 'Cancel the order').click()
    const dialog = desk.getByRole('dialog', { name: 'Cancel the order' })
    await dialog.getByLabel('We decline: it would disable a safety system').check()
    await dialog.getByLabel('In words').fill('Offered: the sensors stay, or new ones. He takes it as it is.')
    await button(desk, 'Cancel it').click()
    await dialog.waitFor({ state: 'detached' })
    await desk.locator('#estimate').waitFor({ state: 'detached' })
    const kinds = (await browser().desk.entriesOf(orderId)).map(({ kind }) => kind)
    expect(kinds.at(-1)).toBe('order.refused')
    expect(kinds).not.toContain('estimate.issued')
  })
})
