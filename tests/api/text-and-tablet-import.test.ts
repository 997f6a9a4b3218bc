import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { csvCaller, csvWith } from '../support/csv-caller.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

describe('the shop’s own texts as CSV', () => {
  const csv = () => csvCaller(owner, '/api/register/texts')
  const texts = async () => (await owner.get('/api/register/texts').expect(200)).body

  it('come back as the same', async () => {
    const { counts } = await csv().preview(await csv().written())
    expect(counts).toEqual({ added: 0, changed: 0, same: 19, refused: 0 })
  })

  it('are one version for a file, with line breaks and what a spreadsheet would run', async () => {
    const before = await texts()
    const text = csvWith(await csv().written(), (line) =>
      line.startsWith('report_footer,')
        ? 'report_footer,"=SUM(1) is no sum here.\r\nCome again."'
        : line.startsWith('message_estimate_en,')
          ? 'message_estimate_en,"{name}, read {link}"'
          : line,
    )
    await csv().take(text)
    const after = await texts()
    expect(after.record).toMatchObject({
      version: before.record.version + 1,
      content: {
        reportFooter: '=SUM(1) is no sum here.\nCome again.',
        messages: { estimate: { en: '{name}, read {link}', es: null } },
      },
    })
    expect(after.history[0].by).toBe('Marguerite Ashby-Bell')
    expect((await csv().preview(await csv().written())).counts).toMatchObject({ changed: 0, same: 19 })
  })

  it('refuse a message without its link, a telephone in another form and a text that there is not', async () => {
    const text = [
      'text,words',
      'telephone,555 0100',
      'message_estimate_en,Your car is ready',
      'motto,We mean well',
    ].join('\r\n')
    const { counts, refused } = await csv().preview(text)
    expect(counts).toEqual({ added: 0, changed: 0, same: 0, refused: 3 })
    expect(refused.map(({ name, faults }) => [name, faults[0]?.column])).toEqual([
      ['telephone', 'words'],
      ['message_estimate_en', 'words'],
      ['motto', 'text'],
    ])
  })

  it('leave out nothing that a file does not name', async () => {
    const before = (await texts()).record.content
    await csv().take('text,words\r\ntelephone,+15555550188\r\n')
    expect((await texts()).record.content).toEqual({ ...before, telephone: '+15555550188' })
  })
})

describe('the tablets as CSV', () => {
  const csv = () => csvCaller(owner, '/api/tablets')
  const tabletOf = async (id: string) => (await owner.get(`/api/tablets/${id}`).expect(200)).body

  it('come back as the same; a file renames and moves them, with their history', async () => {
    const { deviceId } = await shop.tablet()
    const text = await csv().written()
    expect((await csv().preview(text)).counts).toMatchObject({ added: 0, changed: 0, refused: 0 })
    const shown = await csv().take(
      csvWith(text, (line) =>
        line.startsWith(deviceId)
          ? line.replace(',Bay 9,Tamber Street,', ',Cart by the door,Millrace Road,')
          : line,
      ),
    )
    expect(shown.changed).toEqual([
      expect.objectContaining({
        name: 'Cart by the door',
        fields: [
          { column: 'name', before: 'Bay 9', after: 'Cart by the door' },
          { column: 'place', before: 'Tamber Street', after: 'Millrace Road' },
        ],
      }),
    ])
    const { record, history } = await tabletOf(deviceId)
    expect(record.content).toMatchObject({ name: 'Cart by the door', isOut: false })
    expect(history[0].by).toBe('Marguerite Ashby-Bell')
  })

  it('are neither added nor put out by a file', async () => {
    const tablet = await shop.tablet()
    const text = csvWith(
      await csv().written(),
      (line) => (line.startsWith(tablet.deviceId) ? line.replace(/,no$/, ',yes') : line),
      ['019bb314-2300-7000-8000-000000000000,Bay 10,Tamber Street,2026-01-05,no'],
    )
    const { counts, refused } = await csv().preview(text)
    expect(counts).toMatchObject({ added: 0, changed: 0, refused: 2 })
    expect(refused.map(({ faults }) => faults[0]?.column).toSorted()).toEqual(['put_out', 'tablet'])
    expect((await tabletOf(tablet.deviceId)).record.content.isOut).toBe(false)
  })
})
