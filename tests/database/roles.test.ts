import { openPool } from '@bayledger/db/pool'
import { judgeServiceRole } from '@bayledger/db/roles/judge-service-role'
import { forgeable, serviceMay } from '@bayledger/db/roles/service-may'
import { bringUpToDate, guardServiceRole } from '@bayledger/db/shop-database'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { startTestApp, type TestApp } from '../support/app.ts'
import { createTestDatabase } from '../support/database.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  const { orderId, lines } = freshCopy(shop.demo, 'T-2601')
  await replay.sendUntil(lines)
  const desk = await replay.as('ottoline', 'desk')
  await desk.post(`/api/orders/${orderId}/reports`, { entryId: crypto.randomUUID() }).expect(201)
})
afterAll(() => shop.stop())

const asService = (statement: string) => withClient(shop.url, (client) => client.query(statement))
const asOwner = (statement: string) => withClient(shop.ownerUrl, (client) => client.query(statement))

describe("the service's role", () => {
  it('may do on each table what was decided, and nothing more', async () => {
    const { rows } = await asService(`
      select relname as table, coalesce(array_agg(lower(privilege) order by privilege)
        filter (where has_table_privilege(current_user, pg_class.oid, privilege)), '{}') as rights
      from pg_class cross join unnest(array['SELECT','INSERT','UPDATE','DELETE','TRUNCATE','REFERENCES','TRIGGER'])
        as privilege
      where relnamespace = 'public'::regnamespace and relkind in ('r', 'p', 'v') group by relname`)
    const found = Object.fromEntries(rows.map(({ table, rights }) => [table, rights]))
    const decided = Object.fromEntries(
      Object.entries(serviceMay).map(([table, rights]) => [table, rights.toSorted()]),
    )
    expect(found).toEqual(decided)
  })

  it('has no right on a single column beyond those on its table', async () => {
    const { rows } = await asService(
      `select attrelid::regclass::text as table from pg_attribute
       where attacl is not null and attrelid::regclass::text = any (array['${forgeable.join("','")}'])`,
    )
    expect(rows).toEqual([])
  })

  it.each([
    'update entries set payload = payload',
    'delete from entries',
    'truncate entries cascade',
    "update sealed_reports set sha256 = repeat('0', 64)",
    'delete from sealed_reports',
    "update personal_texts set text = 'another'",
    'delete from personal_texts',
    'update blobs set bytes = bytes',
    'delete from blobs',
    'alter table entries disable trigger entries__append_only',
    'drop trigger entries__append_only on entries',
    'create trigger mine before insert on entries for each row execute function refuse_change()',
    'create or replace function refuse_change() returns trigger language plpgsql as $$ begin return new; end $$',
    "set session_replication_role = 'replica'",
    'alter table entries owner to current_user',
    'drop table entries cascade',
    'create table entries_copy (id int)',
    'create rule mine as on insert to entries do instead nothing',
  ])('is refused "%s"', async (statement) => {
    await expect(asService(statement)).rejects.toMatchObject({ code: '42501' })
  })

  it('cannot become the owner, nor give itself a right', async () => {
    const owner = decodeURIComponent(new URL(shop.ownerUrl).username)
    await expect(asService(`set role ${owner}`)).rejects.toMatchObject({ code: '42501' })
    // PostgreSQL answers with a warning that nothing was granted.
    await asService('grant update on entries to current_user')
    expect((await asService("select has_table_privilege('entries', 'UPDATE') as may")).rows).toEqual([
      { may: false },
    ])
  })
})

describe('the owner', () => {
  it.each([
    "update sealed_reports set sha256 = repeat('0', 64)",
    'delete from sealed_reports',
    'truncate sealed_reports cascade',
    'truncate personal_texts',
    'truncate blobs',
    'truncate order_heads cascade',
  ])('is refused "%s" by a trigger', async (statement) => {
    await expect(asOwner(statement)).rejects.toMatchObject({ code: '23001' })
  })
})

describe('starting', () => {
  const verdictOf = async (url: string) => {
    const pool = openPool({ url, size: 1, onIdleError: () => undefined })
    return judgeServiceRole(pool).finally(() => pool.end())
  }
  const database = (serviceUrl: string, ownerUrl: string | null) => ({
    serviceUrl,
    ownerUrl,
    stop: async () => undefined,
  })
  const silent = () => {
    throw new Error('nothing is said')
  }

  it('goes on as a role that can forge nothing', async () => {
    expect((await verdictOf(shop.url)).could).toEqual([])
    await guardServiceRole(database(shop.url, null), 'two', silent)
  })

  it('is refused as the owner, with what the owner could do and what to do about it', async () => {
    const { could } = await verdictOf(shop.ownerUrl)
    expect(could).toEqual(
      expect.arrayContaining([
        'it owns the database',
        'it owns the table entries',
        'it may delete, trigger, truncate, update sealed_reports',
      ]),
    )
    await expect(guardServiceRole(database(shop.ownerUrl, null), 'two', silent)).rejects.toThrow(
      /could change or remove what was written[\s\S]*DATABASE_OWNER_URL[\s\S]*docs\/operations\.md[\s\S]*DATABASE_ROLES=one/,
    )
  })

  it('is allowed as the owner where the keeper of the database chose one role, with a warning', async () => {
    const said: string[] = []
    await guardServiceRole(database(shop.ownerUrl, null), 'one', (line) => said.push(line))
    expect(said).toEqual([expect.stringMatching(/^WARNING: .*could change or remove/)])
  })

  it('is refused where one column could be changed, and where a right was granted by hand', async () => {
    const role = decodeURIComponent(new URL(shop.url).username)
    await asOwner(`grant update (payload) on entries to ${role}`)
    expect((await verdictOf(shop.url)).could).toEqual(['it may update entries'])
    await asOwner(`revoke update (payload) on entries from ${role}`)
    expect((await verdictOf(shop.url)).could).toEqual([])
  })

  it('names what is pending where the owner is not known, and brings it up to date where it is', async () => {
    const empty = await createTestDatabase('empty')
    try {
      await expect(bringUpToDate(database(empty.serviceUrl, null))).rejects.toThrow(
        /lacks \d+ migrations \(20260112000000_the_shop …\).*DATABASE_OWNER_URL.*npm run db:migrate/,
      )
      await bringUpToDate(database(empty.serviceUrl, empty.url))
      await bringUpToDate(database(empty.serviceUrl, null))
      await guardServiceRole(database(empty.serviceUrl, empty.url), 'two', silent)
      const tomorrow = `insert into _prisma_migrations (id, checksum, migration_name, finished_at)
        values ('1', '0', '29990101000000_tomorrow', now())`
      await withClient(empty.url, (client) => client.query(tomorrow))
      for (const owner of [empty.url, null])
        await expect(bringUpToDate(database(empty.serviceUrl, owner))).rejects.toThrow(
          /29990101000000_tomorrow, which this Bayledger does not know: it was made by a newer one/,
        )
      await withClient(empty.url, (client) => client.query(`delete from _prisma_migrations where id = '1'`))
      await withClient(empty.url, (client) => client.query('create table wheels_of_tomorrow (id int)'))
      await expect(bringUpToDate(database(empty.serviceUrl, empty.url))).rejects.toThrow(
        /Nobody has decided what the service may do with the table wheels_of_tomorrow/,
      )
    } finally {
      await empty.drop()
    }
  })
})
