import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { violationsOn } from './support/accessible.ts'
import { openDesk } from './support/begin.ts'
import { openOrder } from './support/desk.ts'
import { setStage } from './support/stage.ts'

/** The demo's order of which the estimate waits for its answer. */
const customer = 'W. Dunmore-Gray'
const stage = setStage()

let desk: Page
beforeAll(async () => {
  desk = await openDesk(stage())
  await openOrder(desk, customer)
})

const button = (name: string) => desk.getByRole('button', { name, exact: true })

describe('an estimate with what the customer asks for and what is added by hand', () => {
  it('is seen line by line before it is issued, with its differences to the version before', async () => {
    await button('New version').click()
    const dialog = desk.getByRole('dialog')
    await dialog.getByLabel('Job that the customer asks for').selectOption({ label: 'Rotation' })
    await dialog.getByLabel('Pattern').selectOption({ index: 1 })
    await dialog.getByText(/^left front: goes to left rear, tread/).waitFor()
    await dialog.getByText(/^left rear: the wheel from left front, tread/).waitFor()
    await button('Add this job').click()
    // The button is gone; by keyboard the next job is chosen where this one was.
    await desk.waitForFunction(() => document.activeElement?.tagName === 'SELECT')
    await dialog.getByLabel('Job that the customer asks for').selectOption({ label: 'New valve stems' })
    await button('Add this job').click()
    await button('Ask the customer now what to do then').click()
    await dialog.getByLabel('Line by hand').selectOption({ label: 'In your own words' })
    await dialog.getByLabel('Work of another shop').check()
    await dialog.getByLabel('What the customer reads').fill('Weld the exhaust bracket')
    await dialog.getByLabel('Price of one, $').fill('80')
    await button('Add this line').click()
    await dialog.getByLabel('Line by hand').selectOption({ label: 'Straighten a bent wheel · $125.00' })
    await button('Add this line').click()
    await dialog
      .getByLabel(/^In place of something else: Work that another shop does: Straighten/)
      .selectOption({ label: 'in place of: Work that another shop does: Weld the exhaust bracket' })
    const preview = dialog.getByRole('region', { name: 'As the customer reads it' })
    await preview.getByText('Take the wheels off, rotate them, tighten them').waitFor()
    await preview
      .getByText(/^Charged more than once: taking the tire off, right rear, in New sensor/)
      .waitFor()
    await preview.getByText(/No: we stop and show you first/).waitFor()
    await preview.getByText('(in place of: Work that another shop does: Weld the exhaust bracket)').waitFor()
    const changes = dialog.getByRole('region', { name: 'Against version 1' })
    await changes.getByText(/^New: Rotate the tires, \$/).waitFor()
    expect(await violationsOn(desk)).toEqual([])
  })

  it('says of a replacement tire whether it may stand in for the sheet’s, and how far the treads are apart', async () => {
    const dialog = desk.getByRole('dialog')
    await dialog.getByText('Check a replacement tire').click()
    await dialog.getByLabel('Tire that the door label names').fill('235/60R18 103H')
    await dialog.getByLabel('New tire, as its sidewall prints it').fill('235/60R18 99S')
    await dialog.getByRole('group', { name: 'Vehicle' }).getByLabel('Car', { exact: true }).check()
    const says = dialog.getByRole('status', { name: 'What the check says' })
    await says.getByText('Do not fit it.', { exact: true }).waitFor()
    await says.getByText(/load index is lower/).waitFor()
    await dialog.getByLabel('New tire, as its sidewall prints it').fill('235/60R18 103H')
    await says.getByText(/It is the tire that the sheet names/).waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await dialog.getByText('Check a replacement tire').click()
  })

  it('says of another wheel whether it goes on, and of what balancing left what it does', async () => {
    const dialog = desk.getByRole('dialog')
    await dialog.getByText('Check another wheel').click()
    await dialog.getByLabel('Diameter of the hub').fill('67.1')
    await dialog.getByLabel('Of the other wheel: bore').fill('66.1')
    const fit = dialog.getByRole('status', { name: 'What the check of the wheel says' })
    await fit.getByText('Do not fit it.', { exact: true }).waitFor()
    await dialog.getByLabel('Of the other wheel: bore').fill('73.1')
    await dialog.getByLabel('Width of the own rim').fill('7')
    await dialog.getByLabel('Offset of the own wheel').fill('45')
    await dialog.getByLabel('Of the other wheel: width').fill('7')
    await dialog.getByLabel('Of the other wheel: offset').fill('-10')
    await fit.getByText(/needs a centering ring/).waitFor()
    await fit.getByText(/make the track 110 mm wider/).waitFor()
    await dialog.getByText('Judge what is left after balancing').click()
    await dialog.getByRole('group', { name: 'Balanced for' }).getByLabel('Car', { exact: true }).check()
    await dialog.getByLabel('Left on the inner side').fill('0.5')
    await dialog.getByLabel('Left on the outer side').fill('0')
    await dialog.getByText(/over the 10 g that a side may have/).waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await dialog.getByText('Check another wheel').click()
    await dialog.getByText('Judge what is left after balancing').click()
  })

  it('is not issued with a discount that its writer may not give, and nothing that was chosen is lost', async () => {
    const dialog = desk.getByRole('dialog')
    const line = dialog.getByLabel('Discount on one line')
    const weld = await line
      .locator('option', { hasText: 'Weld the exhaust bracket · $80.00' })
      .getAttribute('value')
    await line.selectOption(weld)
    await dialog.getByLabel('Off, $').fill('40')
    await dialog.getByLabel('Reason, as the customer reads it').fill('Regular customer')
    await button('Give this discount').click()
    await dialog
      .getByRole('region', { name: 'As the customer reads it' })
      .getByText('Regular customer')
      .waitFor()
    await button('Issue this estimate').click()
    await dialog.getByRole('alert').waitFor()
    await button('Take back the discounts on single lines').click()
    await button('Issue this estimate').click()
    await dialog.waitFor({ state: 'detached' })
    await desk.getByText('What changed since version 1').click()
    await desk.getByText(/^New: Work that another shop does: Weld the exhaust bracket, \$/).waitFor()
  })

  it('has one of several alternatives chosen by telephone, and the others declined by it', async () => {
    await button('Decide by telephone').click()
    const dialog = desk.getByRole('dialog')
    await dialog
      .getByText(/or, in place of Work that another shop does: Weld the exhaust bracket/)
      .first()
      .waitFor()
    const weld = dialog.getByRole('group', { name: /^Work that another shop does: Weld/ })
    await weld.getByRole('radio', { name: 'Yes' }).check()
    const straighten = dialog.getByRole('group', { name: /^Work that another shop does: Straighten/ })
    await expect.poll(() => straighten.getByRole('radio', { name: 'No', exact: true }).isChecked()).toBe(true)
  })
})

describe('new tires, sensors kept', () => {
  it('are of the book by size, pass the check against the sheet, and are on the next version', async () => {
    await button('Close').click()
    await desk.getByRole('dialog').waitFor({ state: 'detached' })
    await openOrder(desk, 'L. Fontaine-Reed')
    await button('New version').click()
    const dialog = desk.getByRole('dialog')
    await dialog
      .getByLabel('Job that the customer asks for')
      .selectOption({ label: 'New tires, sensors kept' })
    await dialog
      .getByLabel('Tire', { exact: true })
      .selectOption({ label: 'All-season tire 225/65R17 · 225/65R17 102H' })
    await dialog.getByText('Check a replacement tire').click()
    await dialog.getByLabel('New tire, as its sidewall prints it').fill('225/65R17 102H')
    await dialog.getByLabel('Truck, van or multipurpose', { exact: true }).check()
    await dialog
      .getByRole('status', { name: 'What the check says' })
      .getByText(/It is the tire that the sheet names/)
      .waitFor()
    await button('Add this job').click()
    const preview = dialog.getByRole('region', { name: 'As the customer reads it' })
    await preview.getByText('All-season tire 225/65R17').first().waitFor()
    await dialog
      .getByRole('region', { name: 'Against version 1' })
      .getByText(/^New: New tires/)
      .waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await button('Issue this estimate').click()
    await dialog.waitFor({ state: 'detached' })
  })

  it('go into the plan after a Yes by telephone, each with its own sensor and new stem parts', async () => {
    await button('Decide by telephone').click()
    const dialog = desk.getByRole('dialog')
    await dialog
      .getByRole('group', { name: /^New tires/ })
      .getByRole('radio', { name: 'Yes' })
      .check()
    await dialog.getByLabel('The owner', { exact: true }).check()
    await dialog.getByLabel('Number called').fill('555 0100 211')
    await dialog.getByLabel('The answer, in their words').fill('Yes, all four.')
    await button('Record the decision').click()
    await dialog.waitFor({ state: 'detached' })
    const orderId = new URL(desk.url()).pathname.split('/').at(-1) ?? ''
    const plan = (await stage().desk.entriesOf(orderId)).findLast(({ kind }) => kind === 'plan.issued')
    const keys = JSON.stringify(plan?.payload).match(
      /(LF|RF|RR|LR)\.(tire\.match|stem\.renew|sensor\.fit)(?=")/g,
    )
    expect([...new Set(keys)].toSorted()).toEqual(
      ['LF', 'LR', 'RF', 'RR'].flatMap((wheel) => [`${wheel}.stem.renew`, `${wheel}.tire.match`]),
    )
  })
})
