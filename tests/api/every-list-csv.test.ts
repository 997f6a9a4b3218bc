import { contract } from '@bayledger/contract/contract'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { csvCaller } from '../support/csv-caller.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
  await shop.tablet()
})
afterAll(() => shop.stop())

/** What is of the ledger itself goes out and is never read in. */
const onlyOut = /^\/api\/(day|exports\/[a-z]+)\.csv$/
const lists = contract.map(({ path }) => path).filter((path) => path.endsWith('.csv') && !onlyOut.test(path))

it('is one of these: all that an owner edits about the shop goes out as CSV', () => {
  expect(lists.toSorted()).toEqual([
    '/api/people.csv',
    '/api/places.csv',
    '/api/price-book.csv',
    '/api/register/instruments.csv',
    '/api/register/texts.csv',
    '/api/sheets.csv',
    '/api/stock.csv',
    '/api/tablets.csv',
  ])
})

it.each(lists)('%s comes back by its import as the same, and taking it changes no byte', async (path) => {
  const csv = csvCaller(owner, path.replace(/\.csv$/, ''))
  const text = await csv.written()
  const shown = await csv.take(text)
  expect(shown.counts).toMatchObject({ added: 0, changed: 0, refused: 0 })
  expect(shown.counts.same).toBeGreaterThan(0)
  expect(await csv.written()).toBe(text)
})
