import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { withCells } from '../support/csv-cells.ts'
import { tabTo, violationsOn } from './support/accessible.ts'
import { signInAtDesk } from './support/desk.ts'
import { setStage } from './support/stage.ts'

const stage = setStage()
let page: Page

beforeAll(async () => {
  page = await stage().open('desk', '/desk/sign-in')
  await signInAtDesk(page, 'marguerite', 'brindle-falls-marguerite')
})

const typed = async (label: string, text: string): Promise<void> => {
  await tabTo(page, label)
  await page.keyboard.press('ControlOrMeta+a')
  await page.keyboard.type(text)
}

describe('an owner at the shelf, by keyboard', () => {
  it('finds the vehicles of a lot that is called back, with whom to call, in one search', async () => {
    await page.goto('/desk/shop/recall')
    await page.getByRole('heading', { name: 'Lot recall' }).waitFor()
    await typed('Lot that is called back', 'k7714 ')
    await page.keyboard.press('Enter')
    await page.getByText(/^1 vehicle; the owners of 1 agreed to be called\.$/).waitFor()
    const row = page.getByRole('row', { name: /S\. Achterberg/ })
    expect(await row.textContent()).toMatch(/T-2603 LF, TS-315-C, drawn .*sensor …0B27, last heard at LF/)
    expect(await row.textContent()).toMatch(/may be called/)
    await page.getByText(/Tamber Street, TS-315-C: 3 came with this lot .* Look for 2/).waitFor()
    expect(await violationsOn(page)).toEqual([])
    await typed('Lot that is called back', 'c118-4')
    await page.keyboard.press('Enter')
    await page.getByRole('row', { name: /LF, TK-C, kit fitted .*sensor …0B27.*S\. Achterberg/ }).waitFor()
  })

  it('receives a part, with its lot', async () => {
    await page.goto('/desk/shop/stock')
    await page.getByRole('button', { name: /^TS-2400-C, Tamber Street/ }).focus()
    await page.keyboard.press('Enter')
    await page.getByText('0 on hand').waitFor()
    await page.getByLabel('How many', { exact: true }).focus()
    await page.keyboard.type('10')
    await typed('Lot', 'Q-24 ')
    await page.keyboard.press('Enter')
    await page.getByText('10 on hand').waitFor()
    await page.getByText(/\+10 received .*Marguerite Ashby-Bell · lot Q-24$/).waitFor()
    expect(await violationsOn(page)).toEqual([])
  })

  it('changes a price, and reads that estimates which are out keep theirs', async () => {
    await page.goto('/desk/shop/prices')
    await page.getByText(/keeps? its prices: a version that was issued is frozen/).waitFor()
    await typed('Labor for an hour', '135.00')
    await page.keyboard.press('Enter')
    await page.getByText('Saved. This is version 2.').waitFor()
    await page.getByText('Labor for an hour: 130.00 $ → 135.00 $').waitFor()
    expect(await violationsOn(page)).toEqual([])
  })

  it('reads a file of sheets: what would change, what is refused and why; takes it, and writes the same again', async () => {
    await page.goto('/desk/shop/sheets')
    const before = await written()
    const good = withCells(before, 'Vantrell Linnet', { lift_notes: 'Front point.' })
    const file = withCells(good, 'Kestwick Moor', { label_front_psi: '230' })
    await pressed('Read a CSV file')
    await page
      .getByLabel(/Nothing changes before you have seen/)
      .setInputFiles({ name: 'sheets.csv', mimeType: 'text/csv', buffer: Buffer.from(file) })
    await page.getByText(/^0 added, 1 changed, \d+ the same, 1 refused\.$/).waitFor()
    await page.getByRole('row', { name: /label_front_psi 230 .*kPa/ }).waitFor()
    await page.getByRole('row', { name: /Vantrell Linnet .*lift_notes: .* → Front point\./ }).waitFor()
    expect(await violationsOn(page)).toEqual([])
    await pressed('Take 1 row, leave the refused ones out')
    await page.getByText(/^Done\. 0 added, 1 changed, \d+ the same, 1 refused\.$/).waitFor()
    await page.keyboard.press('Escape')
    expect(await written()).toBe(good)
  })

  it('lists the orders that used a sheet, with what to tell their owners if a figure was wrong', async () => {
    await page.goto('/desk/shop/sheets')
    await page
      .getByRole('button', { name: /^Vantrell Linnet/ })
      .first()
      .click()
    await pressed('List the orders that used this sheet')
    await page.getByText(/orders? ha(s|ve) used this sheet\.$/).waitFor()
    await page.getByText(/was wrong when we worked on it/).waitFor()
    await page.getByText(/estaba equivocado cuando trabajamos en él/).waitFor()
    expect(await violationsOn(page)).toEqual([])
  })
})

describe('an owner at an upright tablet', () => {
  beforeAll(() => page.setViewportSize({ width: 768, height: 1024 }))

  it.each([
    ['people', 'people.csv'],
    ['places', 'places.csv'],
    ['texts', 'texts.csv'],
    ['instruments', 'instruments.csv'],
    ['tablets', 'tablets.csv'],
    ['prices', 'prices.csv'],
    ['stock', 'stock.csv'],
    ['sheets', 'specification-sheets.csv'],
  ])('writes %s to a file, on a page that needs no scrolling sideways', async (path, name) => {
    await page.goto(`/desk/shop/${path}`)
    const button = page.getByRole('button', { name: 'Write to CSV' })
    await button.waitFor()
    expect(await sideways()).toBe(0)
    expect(await violationsOn(page)).toEqual([])
    const [download] = await Promise.all([page.waitForEvent('download'), button.click()])
    expect(download.suggestedFilename()).toBe(name)
    const [header, ...rows] = (await readFile(await download.path(), 'utf8')).trimEnd().split('\r\n')
    expect(header).toMatch(/^\uFEFF[a-z_]+,/)
    expect(rows.length).toBeGreaterThan(path === 'tablets' ? -1 : 0)
  })

  it('finds a lot, and a figure to verify by its name, on pages that need none either', async () => {
    await page.goto('/desk/shop/recall')
    await typed('Lot that is called back', 'k7714')
    await page.keyboard.press('Enter')
    await page.getByRole('row', { name: /S\. Achterberg/ }).waitFor()
    expect(await sideways()).toBe(0)
    expect(await violationsOn(page)).toEqual([])
    await page.goto('/desk/shop/sheets')
    await page.getByRole('button', { name: /^Dorrin Pannier van 2020/ }).click()
    await page.getByRole('button', { name: 'Verify: Wheel torque and thread', exact: true }).waitFor()
    const names = await page
      .getByRole('button', { name: /^Verify/ })
      .evaluateAll((buttons) => buttons.map((one) => one.getAttribute('aria-label')))
    expect(new Set(names).size).toBe(names.length)
    expect(await sideways()).toBe(0)
    expect(await violationsOn(page)).toEqual([])
  })
})

/** By how much the page is wider than its window. */
const sideways = (): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

const pressed = async (words: string): Promise<void> => {
  await tabTo(page, words)
  await page.keyboard.press('Enter')
}

/** The file that the open page writes. */
const written = async (): Promise<string> => {
  const [download] = await Promise.all([page.waitForEvent('download'), pressed('Write to CSV')])
  return readFile(await download.path(), 'utf8')
}
