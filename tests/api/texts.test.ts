import { ownMessagesIn } from '@bayledger/ledger/message-template'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const path = '/api/register/texts'
const version = (number: number) => ({ 'if-match': `"${number}"` })
const read = async () => (await owner.get(path).expect(200)).body
const full = {
  lines: ['14 Tamber Street, Brindle Falls'],
  telephone: '+15555550100',
  reportFooter: 'Thank you for coming.\nCome back after 50 miles.',
  cautions: 'We check the torque again free of charge.',
  messages: {
    ...ownMessagesIn(null),
    estimate: { en: 'Dear {name}, please look at your {vehicle}: {link}', es: null },
  },
  quietHours: '20:30-09:00',
  warranty: { laborMonths: 12, sensorMonths: 36, sensorMiles: null },
}

it('are the demo’s head of reports, written by the program, and read by the owner only', async () => {
  const { record, history } = await read()
  expect(record).toMatchObject({ version: 1, content: { telephone: '+15555550100', reportFooter: null } })
  expect(history).toMatchObject([{ version: 1, by: null }])
  await (await shop.desk('ottoline')).get(path).expect(403)
})

it('are written as versions over the one that was read, and those who were late get both', async () => {
  await owner.put(path, { content: full }, version(1)).expect(200)
  const lost = await owner.put(path, { content: { ...full, cautions: null } }, version(1)).expect(412)
  expect(lost.body.current).toEqual({ id: 'texts', version: 2, content: full, facts: {} })
  expect(lost.body.sent.cautions).toBeNull()
  const { history } = await read()
  expect(history.map(({ by }: { by: string }) => by)).toEqual(['Marguerite Ashby-Bell', null])
})

it('are never two versions of one number when two owners save at once', async () => {
  const { record } = await read()
  const replies = await Promise.all(
    ['A.', 'B.', 'C.'].map((reportFooter) =>
      owner.put(path, { content: { ...full, reportFooter } }, version(record.version)),
    ),
  )
  expect(replies.map(({ status }) => status).toSorted()).toEqual([200, 412, 412])
})

it('name what cannot be', async () => {
  const content = {
    lines: ['a', 'b', 'c', 'd', 'e'],
    telephone: '555 0100',
    reportFooter: '',
    cautions: 'x'.repeat(601),
    messages: {
      estimate: { en: 'Dear {name}', es: null },
      report: { en: 'Dear {nmae}: {link}', es: null },
      retorque: { en: null, es: '{name}' },
      deferred: { en: null, es: '' },
    },
    quietHours: '24:00-08:00',
    warranty: { laborMonths: -1, sensorMonths: 24, sensorMiles: 0.5 },
  }
  const { body } = await owner.put(path, { content }, version(3)).expect(422)
  expect(body.fields.map(({ field }: { field: string }) => field).toSorted()).toEqual([
    'content.cautions',
    'content.lines',
    'content.messages.deferred.es',
    'content.messages.estimate.en',
    'content.messages.report.en',
    'content.messages.retorque.es',
    'content.quietHours',
    'content.reportFooter',
    'content.telephone',
    'content.warranty.laborMonths',
    'content.warranty.sensorMiles',
  ])
  const allowed = (named: string) =>
    body.fields.find(({ field }: { field: string }) => field === named)?.allowed
  expect(allowed('content.messages.estimate.en')).toBe('a text that holds {link}')
  expect(allowed('content.messages.report.en')).toBe(
    'a text in which only {name}, {vehicle}, {shop}, {link} are in braces: {nmae} is not filled in',
  )
})
