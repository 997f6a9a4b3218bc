import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { giveLongestNames } from '../support/longest-names.ts'
import { button } from './support/bay.ts'
import { openOrder, signInAtDesk } from './support/desk.ts'
import { layoutFaultsOn } from './support/layout-faults.ts'
import { setStage } from './support/stage.ts'

const long = (letters: string, count: number) => letters.repeat(count).slice(0, count)
const customer = long('Wolframhildegunde', 80)
const street = long('Mwendelinsgrabenweg', 80)
const vehicle = long('Wagonwideload', 80)
const reason = long('mwhochgerechnetundwiederabgezogen', 200)

const stage = setStage(null, (database) =>
  giveLongestNames(database, 'W. Dunmore-Gray', { customer, vehicle, address: street }),
)

/** Two lines a vehicle: what is cut there is whole on the order's sheet. */
const cutOnPurpose = '.floor-cut, .wall-cut, .wall-now'

describe('the longest words, without a space', () => {
  let desk: Page
  let orderId: string
  beforeAll(async () => {
    desk = await stage().open('desk', '/desk/sign-in')
    await signInAtDesk(desk, 'marguerite', 'brindle-falls-marguerite')
    await openOrder(desk, customer)
    orderId = /orders\/([\w-]+)/.exec(desk.url())?.[1] ?? ''
    await desk.getByLabel('Amount received').fill('40')
    await desk.getByRole('radio', { name: 'cash', exact: true }).check()
    await button(desk, 'Note the payment').click()
    await button(desk, 'Yes, note it').click()
    await button(desk, 'Give money back').click()
    const dialog = desk.getByRole('dialog', { name: 'Give money back' })
    await dialog.getByLabel('Amount given back').fill('15')
    await dialog.getByLabel('Why').fill(reason)
    expect(await layoutFaultsOn(desk, cutOnPurpose), 'a dialog').toEqual([])
    await button(desk, 'Record that it was given back').click()
    await desk.getByText(/Gave back/).waitFor()
  })

  it.each([
    ['1280 × 800', 1_280, 800],
    ['the same at 200 %', 640, 400],
  ])('are whole on the order sheet and leave the floor list its figures, on %s', async (_, width, height) => {
    await desk.setViewportSize({ width, height })
    expect(await layoutFaultsOn(desk, cutOnPurpose)).toEqual([])
  })

  it('are whole on the customer’s phone, in Spanish', async () => {
    const phone = await stage().open('desk', await stage().desk.customerLink(orderId))
    await phone.setViewportSize({ width: 390, height: 844 })
    await phone.getByRole('radio', { name: 'Sí', exact: true }).first().waitFor()
    await phone.evaluate(() =>
      document.querySelectorAll('details').forEach((part) => {
        part.open = true
      }),
    )
    expect(await layoutFaultsOn(phone)).toEqual([])
  })

  it.each(['work', 'receipt', 'tags', 'floor'])('are whole on what is printed: %s', async (what) => {
    await desk.setViewportSize({ width: 816, height: 1_056 })
    await desk.emulateMedia({ media: 'print' })
    await desk.goto(what === 'floor' ? '/desk/print/floor' : `/desk/print/${what}/${orderId}`)
    await desk.getByText(customer).or(desk.getByText(vehicle)).first().waitFor()
    expect(await layoutFaultsOn(desk)).toEqual([])
    await desk.emulateMedia({ media: 'screen' })
  })

  it('leave the wall its times', async () => {
    await desk.setViewportSize({ width: 1_920, height: 1_080 })
    await desk.goto('/desk/wall')
    await desk
      .getByText(/^T-26\d\d/)
      .first()
      .waitFor()
    expect(await layoutFaultsOn(desk, cutOnPurpose)).toEqual([])
  })
})
