import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { csvCaller, csvWith } from '../support/csv-caller.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const csv = () => csvCaller(owner, '/api/places')
const places = async () => (await owner.get('/api/places').expect(200)).body.records
const quarry =
  'Quarry Lane,"2 Quarry Lane, Brindle Falls",7:30-17:30,07:30-17:30,,07:30-17:30,07:30-17:30,08:00-12:00,,3,910,America/New_York,50.00,lesser-of,10,75.00,,in-person; link,5,yes,2026-01-05'

it('comes back as the same, hours and law included', async () => {
  const { counts } = await csv().preview(await csv().written())
  expect(counts).toEqual({ added: 0, changed: 0, same: 2, refused: 0 })
})

it('adds a place whole, and comes back as the same then', async () => {
  const shown = await csv().take(csvWith(await csv().written(), (line) => line, [quarry]))
  expect(shown.counts).toMatchObject({ added: 1, refused: 0 })
  const added = (await places()).find(
    (one: { content: { name: string } }) => one.content.name === 'Quarry Lane',
  )
  expect(added.content).toMatchObject({
    hours: [
      { opens: '07:30', closes: '17:30' },
      { opens: '07:30', closes: '17:30' },
      null,
      { opens: '07:30', closes: '17:30' },
      { opens: '07:30', closes: '17:30' },
      { opens: '08:00', closes: '12:00' },
      null,
    ],
    bays: 3,
    altitudeFeet: 910,
    lawProfile: {
      writtenEstimateAboveCents: 5_000,
      overrun: { kind: 'lesser-of', percentThousandths: 10_000, cents: 7_500 },
      consentChannels: ['in-person', 'link'],
      retentionYears: 5,
      secondPersonForTorque: true,
      confirmedOn: '2026-01-05',
    },
  })
  const { counts } = await csv().preview(await csv().written())
  expect(counts).toEqual({ added: 0, changed: 0, same: 3, refused: 0 })
})

it('changes a place with its history', async () => {
  const text = csvWith(await csv().written(), (line) =>
    line.startsWith('Quarry Lane,') ? line.replace(',3,910,', ',4,910,') : line,
  )
  const shown = await csv().take(text)
  expect(shown.changed).toEqual([
    expect.objectContaining({ fields: [{ column: 'bays', before: '3', after: '4' }] }),
  ])
  const changed = (await places()).find(
    (one: { content: { name: string } }) => one.content.name === 'Quarry Lane',
  )
  const { history } = (await owner.get(`/api/places/${changed.id}`).expect(200)).body
  expect(history.map(({ version }: { version: number }) => version)).toEqual([2, 1])
})

it('refuses what cannot be, what is likely a slip, and a figure that its rule does not take', async () => {
  const row = (name: string, from: string, to: string) =>
    quarry.replace('Quarry Lane,', `${name},`).replace(from, to)
  const text = csvWith(await csv().written(), (line) => line, [
    row('Lane 1', '7:30-17:30', '17:30-7:30'),
    row('Lane 2', '7:30-17:30', 'mornings'),
    row('Lane 3', 'America/New_York', 'Mars/Olympus'),
    row('Lane 4', ',910,', ',14000,'),
    row('Lane 5', 'lesser-of,10,', 'lesser-of,,'),
    row('Lane 6', 'lesser-of,10,', 'none,10,'),
    row('Lane 7', ',3,910,', ',-1,910,'),
  ])
  const { counts, refused } = await csv().preview(text)
  expect(counts).toMatchObject({ added: 0, changed: 0, refused: 7 })
  expect(refused.map(({ name, faults }) => [name, faults[0]?.column])).toEqual([
    ['Lane 1', 'monday'],
    ['Lane 2', 'monday'],
    ['Lane 3', 'time_zone'],
    ['Lane 4', 'altitude_ft'],
    ['Lane 5', 'overrun_percent'],
    ['Lane 6', 'overrun_percent'],
    ['Lane 7', 'bays'],
  ])
})
