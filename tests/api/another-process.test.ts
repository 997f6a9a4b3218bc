import { spawnSync } from 'node:child_process'
import { randomUUID } from 'node:crypto'
import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { versionOf } from '@bayledger/ledger/registry'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'

let shop: TestApp
let replay: Replay
let orderId: string
let digest: string
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  const order = freshCopy(shop.demo, 'T-2602')
  orderId = order.orderId
  digest = order.lines.flatMap(({ sides }) => sides)[0]?.digest ?? ''
  await replay.sendUntil(order.lines, ({ draft }) => draft.kind === 'wheel.checked')
})
afterAll(() => shop.stop())

/** A command in a process of its own, on the same database. */
const run = (command: string, ...words: string[]) => {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [`apps/api/src/commands/${command}.ts`, ...words],
    { encoding: 'utf8', env: { ...process.env, DATABASE_URL: shop.url } },
  )
  return { status, says: `${stdout}${stderr}` }
}
const note = (caller: Caller) =>
  caller.post('/api/entries', {
    entries: [
      {
        id: randomUUID(),
        orderId,
        kind: 'note.added',
        version: versionOf('note.added'),
        payload: { words: digest },
        writtenAt: shop.clock.now().toISOString(),
        restsOn: [],
      },
    ],
    sides: [],
  })
const resultOf = async (reply: PromiseLike<{ body: { results: { result: string; code?: string }[] } }>) =>
  (await reply).body.results[0]

describe('a command on a data folder without a shop', () => {
  it('says so, and makes no database there', () => {
    const { DATABASE_URL: _, DATABASE_OWNER_URL: __, ...inherited } = process.env
    const folder = mkdtempSync(join(tmpdir(), 'bayledger-no-shop-'))
    try {
      const { status, stderr } = spawnSync(
        process.execPath,
        ['apps/api/src/commands/recover-owner.ts', 'marguerite'],
        { encoding: 'utf8', env: { ...inherited, DATA_FOLDER: folder } },
      )
      expect({ status, stderr }).toEqual({
        status: 2,
        stderr: `There is no shop in ${folder}. Set DATA_FOLDER to the folder of the service, or DATABASE_URL. Nothing was changed.\n`,
      })
      expect(readdirSync(folder)).toEqual([])
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })
})

describe('another process changes a role between two appends', () => {
  it('and the next one is judged by the new roles', async () => {
    const devin = await replay.as('devin', 'desk')
    const opening = freshCopy(shop.demo, 'T-2602').lines.filter(({ draft }) => draft.kind === 'order.opened')
    const asDevin = () =>
      opening.map(({ draft, ...line }) => ({
        ...line,
        draft: {
          ...draft,
          id: randomUUID(),
          orderId: randomUUID(),
          writtenBy: { kind: 'staff' as const, staffId: devinId() },
        },
      }))
    const devinId = () => shop.demo.staff.find(({ signInName }) => signInName === 'devin')?.id ?? ''
    for (const line of asDevin()) expect(await replay.send(line)).toMatchObject({ result: 'accepted' })
    expect(run('staff-roles', 'devin', 'technician')).toEqual({
      status: 0,
      says: 'Devin Marrow: technician (before: advisor).\n',
    })
    for (const line of asDevin())
      expect(await replay.send(line)).toMatchObject({ result: 'refused', code: 'ROLE_NOT_ALLOWED' })
    expect(await resultOf(note(devin))).toMatchObject({ result: 'accepted' })
  })

  it('and the shop keeps an owner, whatever is requested', async () => {
    const last = run('staff-roles', 'marguerite', 'technician')
    expect(last.status).toBe(1)
    expect(last.says).toMatch(/only owner of the shop.*Nothing was changed/)
    expect(run('staff-roles', 'greta', 'lead', 'owner').status).toBe(0)
    expect(run('staff-roles', 'marguerite', 'technician').status).toBe(0)
    expect(run('staff-roles', 'greta', 'lead').says).toMatch(/only owner/)
    expect(run('staff-roles', 'marguerite', 'owner').status).toBe(0)
  })

  it('and says what is wrong with what was typed', () => {
    expect(run('staff-roles', 'greta', 'boss')).toMatchObject({
      status: 2,
      says: expect.stringContaining('There is no role boss. Roles are advisor, technician,'),
    })
    expect(run('staff-roles', 'nobody', 'lead')).toMatchObject({
      status: 1,
      says: expect.stringContaining('Nobody signs in as nobody.'),
    })
  })
})

describe('another process revokes a tablet between two appends', () => {
  it('and nothing that it sends is taken, nor does anybody sign in on it', async () => {
    const tablet = await shop.tablet()
    const bo = await tablet.signIn('bo')
    const ines = await (await shop.tablet()).signIn('ines')
    expect(await resultOf(note(bo))).toMatchObject({ result: 'accepted' })
    expect(run('revoke-device', tablet.deviceId)).toEqual({
      status: 0,
      says: 'Bay 9 is out; sessions ended: 1.\n',
    })
    expect((await note(bo)).status).toBe(401)
    const pin = { staffId: shop.demo.staff.find(({ signInName }) => signInName === 'bo')?.id, pin: '981375' }
    const { body } = await tablet.post('/api/sessions/bay', pin).expect(401)
    expect(body).toMatchObject({ code: 'DEVICE_UNKNOWN' })
    expect(await resultOf(note(ines))).toMatchObject({ result: 'accepted' })
  })

  it('and a name that several tablets have is not guessed at', async () => {
    await shop.tablet()
    await shop.tablet()
    const several = run('revoke-device', 'Bay', '9')
    expect(several.status).toBe(1)
    expect(several.says).toMatch(/Several tablets are called Bay 9. Name one by its id: [0-9a-f-]{36}, /)
    expect(run('revoke-device', 'Bay 77').says).toMatch(/There is no tablet Bay 77/)
  })
})

describe('another process lets an owner in who has lost everything', () => {
  it('by a password that it shows once, and ends what there was before', async () => {
    const before = await shop.desk('marguerite')
    const { id, signInName: name, password: old } = people.marguerite
    await shop.deps.pool.query(
      "insert into second_steps (shop_id, staff_id, secret_box, begun_at, confirmed_at) values ($1, $2, 'x', now(), now())",
      [shop.deps.shopId, id],
    )
    await shop.deps.pool.query(
      `insert into passkeys (shop_id, id, staff_id, name, credential_id, public_key, sign_count, rp_id, added_at)
       values ($1, $2, $2, 'Key', 'x', 'x', 0, 'localhost', now())`,
      [shop.deps.shopId, id],
    )
    const { status, says } = run('recover-owner', name)
    expect(status).toBe(0)
    const [, password = ''] = /with the password (\S+)/.exec(says) ?? []
    await before.get('/api/floor').expect(401)
    await shop.nobody.post('/api/sessions/desk', { name, password: old }).expect(401)
    const reply = await shop.nobody.post('/api/sessions/desk', { name, password }).expect(201)
    expect(reply.body.awaits).toBe('password')
    const { rows } = await shop.deps.pool.query(
      'select from passkeys where staff_id = $1 union all select from second_steps where staff_id = $1',
      [id],
    )
    expect(rows).toEqual([])
  })

  it('and nobody else', () => {
    expect(run('recover-owner', 'devin')).toMatchObject({
      status: 1,
      says: expect.stringContaining('no owner'),
    })
    expect(run('recover-owner', 'nobody').says).toContain('Nobody signs in as nobody. Nothing was changed.')
    expect(run('recover-owner').status).toBe(2)
  })
})

describe('what a command on the machine changed of people and tablets', () => {
  it('is among the security events, without a person who did it', async () => {
    const { rows } = await shop.deps.pool.query(
      `select kind, staff_id, details->>'by' as by, details->'roles' as roles from security_events
       where details->>'by' = 'command' order by recorded_at, id`,
    )
    const before = { staff_id: null, by: 'command' }
    expect(rows[0]).toEqual({ ...before, kind: 'person-changed', roles: ['technician'] })
    expect(rows.at(-2)).toEqual({ ...before, kind: 'tablet-put-out', roles: null })
    expect(rows.at(-1)).toEqual({ ...before, kind: 'owner-recovered', roles: null })
  })
})

describe('another process sets for how long tablets open without the server', () => {
  it('and each hears it at its next contact', async () => {
    const tablet = await shop.tablet()
    const ines = await tablet.signIn('ines')
    expect(run('device-hours', '10')).toEqual({
      status: 0,
      says: `${shop.demo.shop.name}: a tablet that does not reach the server opens what it keeps for 10 hours.\n`,
    })
    expect((await ines.get('/api/devices/current').expect(200)).body.offlineHours).toBe(10)
  })

  it('and says what is wrong with what was typed, and changes nothing', async () => {
    for (const typed of ['0', '721', 'a day', '-5'])
      expect(run('device-hours', typed)).toMatchObject({
        status: 2,
        says: expect.stringContaining(`"${typed}" is no number of hours from 1 to 720`),
      })
    expect(run('device-hours', '--shop', 'Nowhere', '12')).toMatchObject({
      status: 1,
      says: expect.stringContaining('There is no shop Nowhere here. Nothing was changed.'),
    })
    const ines = await (await shop.tablet()).signIn('ines')
    expect((await ines.get('/api/devices/current').expect(200)).body.offlineHours).toBe(10)
  })
})
