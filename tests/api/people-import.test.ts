import { afterAll, beforeAll, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { csvCaller, csvWith } from '../support/csv-caller.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const csv = () => csvCaller(owner, '/api/people')
const personOf = async (signInName: string) =>
  (await owner.get('/api/people').expect(200)).body.records.find(
    (one: { content: { signInName: string } }) => one.content.signInName === signInName,
  )
const named = (signInName: string, row: string) => (line: string) =>
  line.startsWith(`${signInName},`) ? row : line

it('holds no secret, and comes back as the same', async () => {
  const text = await csv().written()
  expect(text.split('\r\n')[0]?.replace('﻿', '')).toBe('sign_in_name,name,roles,works_here')
  expect(text).not.toContain('$argon2')
  for (const { pin, password } of Object.values(people)) {
    expect(text).not.toContain(pin)
    expect(text).not.toContain(password)
  }
  const { counts } = await csv().preview(text)
  expect(counts).toEqual({ added: 0, changed: 0, same: Object.keys(people).length, refused: 0 })
})

it('adds a person who cannot sign in until a PIN is set, with the history of who did', async () => {
  const text = csvWith(await csv().written(), (line) => line, ['odell,Odell Vance,technician; lead,yes'])
  const shown = await csv().take(text)
  expect(shown.counts).toMatchObject({ added: 1, changed: 0, refused: 0 })
  const added = await personOf('odell')
  expect(added).toMatchObject({
    version: 1,
    content: { name: 'Odell Vance', roles: ['technician', 'lead'], active: true },
    facts: { hasPin: false, hasPassword: false },
  })
  const tablet = await shop.tablet()
  const refused = await tablet.post('/api/sessions/bay', { staffId: added.id, pin: '000000' })
  expect(refused.status).toBe(401)
  const { history } = (await owner.get(`/api/people/${added.id}`).expect(200)).body
  expect(history.map(({ by }: { by: string }) => by)).toEqual(['Marguerite Ashby-Bell'])
  expect((await csv().apply(text, shown.digest)).body.code).toBe('CSV_PREVIEW_STALE')
})

it('signs out at once whoever has left, and keeps their PIN for a return', async () => {
  const bay = await (await shop.tablet()).signIn('bo')
  await bay.get('/api/sessions/current').expect(200)
  const { signInName, name } = people.bo
  const before = await personOf(signInName)
  const row = (here: string) => `${signInName},${name},${before.content.roles.join('; ')},${here}`
  await csv().take(csvWith(await csv().written(), named(signInName, row('no'))))
  await bay.get('/api/sessions/current').expect(401)
  expect(await personOf(signInName)).toMatchObject({ content: { active: false }, facts: { hasPin: true } })
  await csv().take(csvWith(await csv().written(), named(signInName, row('yes'))))
  await (await shop.tablet()).signIn('bo')
})

it('refuses what no person can have, row by row', async () => {
  const text = csvWith(await csv().written(), (line) => line, [
    'Odd Name,Somebody,technician,yes',
    'nobody,,technician,yes',
    'wren,Wren Ito,boss,yes',
    'wren,Wren Ito,technician; technician,yes',
    'wren,Wren Ito,,yes',
    'wren,Wren Ito,technician,maybe',
  ])
  const { counts, refused } = await csv().preview(text)
  expect(counts).toMatchObject({ added: 0, changed: 0, refused: 6 })
  expect(refused.map(({ faults }) => faults[0]?.column)).toEqual([
    'sign_in_name',
    'name',
    'roles',
    'roles',
    'roles',
    'works_here',
  ])
  for (const { faults } of refused) for (const fault of faults) expect(fault.do).not.toBe('')
})

it('never takes the last owner away: the rows that would are refused, the others are not', async () => {
  const text = csvWith(
    await csv().written(),
    (line) => (line.includes('owner') ? line.replace(/(; )?owner(; )?/, 'manager') : line),
    ['sable,Sable Quist,technician,yes'],
  )
  const { counts, refused } = await csv().preview(text)
  expect(counts.added).toBe(1)
  expect(refused.length).toBeGreaterThan(0)
  expect(refused.flatMap(({ faults }) => faults.map(({ column }) => column))).toEqual(
    refused.map(() => 'roles'),
  )
})

it('lets one owner go where the same file makes another', async () => {
  const { signInName, name } = people.marguerite
  const text = csvWith(await csv().written(), named(signInName, `${signInName},${name},manager,yes`), [
    'idris,Idris Cole,owner,yes',
  ])
  const { counts } = await csv().preview(text)
  expect(counts).toMatchObject({ added: 1, changed: 1, refused: 0 })
})
