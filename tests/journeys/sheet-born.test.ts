import type { Page } from 'playwright-core'
import { describe, expect, it, onTestFailed } from 'vitest'
import { violationsOn } from './support/accessible.ts'
import { button, shows, type } from './support/bay.ts'
import { openBay, openDesk } from './support/begin.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

const browser = setStage()
const vehicle = 'Dorrin Wicket hatch 2024'
const plate = 'WKT-2024'

const typed = async (page: Page, text: string): Promise<void> => {
  await page.locator('.bay-pad').getByRole('textbox').fill(text)
  await tap(button(page, /^Next/))
}

/** A kind of vehicle that the demo shop has no sheet of, though one of a similar name. */
describe('a vehicle of a kind without a sheet', () => {
  it('is taken in with a blank one, and the bay types its label by touch, onto a sheet for every such vehicle', async () => {
    onTestFailed(() => browser().picture('out'))
    const desk = await openDesk(browser())
    await desk.getByRole('link', { name: 'Write up a complaint' }).first().click()
    await desk.getByLabel('Customer’s name').fill('Quillon Marsh-Teal')
    await desk.getByLabel('Plate').fill(plate)
    await desk.getByLabel('Make, model and year').fill(vehicle)
    await desk.getByRole('button', { name: /Is it a Dorrin Pannier/ }).waitFor()
    await desk.getByRole('button', { name: /No sheet of this kind/ }).click()
    expect(await violationsOn(desk)).toEqual([])
    await desk.getByLabel('The complaint, in the customer’s own words').fill('The light is on.')
    await desk.getByLabel('Flashes for about a minute, then stays on').check()
    await desk.getByLabel(/I asked for each of these by name/).check()
    await desk.getByLabel('Waits here').check()
    await desk.getByLabel('Odometer').fill('50000')
    await desk.getByLabel('Tamber Street', { exact: true }).check()
    await desk.getByLabel(/charged with or without work/).check()
    await desk.getByLabel('Inspecting every wheel and the vehicle').check()
    await desk.getByLabel('The owner', { exact: true }).check()
    await desk.getByRole('button', { name: 'Open the order' }).click()
    await desk.getByRole('heading', { name: /Quillon/ }).waitFor()

    const bay = await openBay(browser())
    await tap(button(bay, `Take it: ${plate}`))
    await shows(bay, 'Type the label in the door')
    expect(await violationsOn(bay)).toEqual([])
    for (const psi of ['33', '33']) {
      await type(bay, psi)
      await tap(button(bay, /^Next/))
    }
    await tap(button(bay, /^no spare/))
    await typed(bay, '205/55R16 91V')
    await tap(button(bay, 'SL', true))
    await type(bay, '51')
    await tap(button(bay, /^Next/))
    await tap(button(bay, /^as the front/))
    await tap(button(bay, /^placard photo/))
    await tap(button(bay, /^Label in the driver/))
    await tap(button(bay, 'Enter it on the sheet'))
    await shows(bay, 'Enter what the vehicle listens to')
    await tap(button(bay, /^without sensors/))
    await tap(button(bay, 'Enter it on the sheet'))
    await shows(bay, 'Note the temperatures')
    const { sheets } = await bay.evaluate(async () =>
      (await fetch('/api/sheets', { headers: { 'bayledger-face': 'bay' } })).json(),
    )
    expect(sheets).toContainEqual(
      expect.objectContaining({
        name: vehicle,
        system: 'indirect',
        studs: 'missing',
        placard: expect.objectContaining({ front: { psi: 33, kPa: null } }),
      }),
    )
  })
})
