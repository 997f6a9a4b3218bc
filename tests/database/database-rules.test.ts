import { isErrorCode } from '@bayledger/contract/errors'
import { constraintErrors } from '@bayledger/db/constraint-errors'
import { driftOfDatabase, driftOfMigrations } from '@bayledger/db/migrations/drift'
import { Client } from 'pg'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'

let fresh: TestDatabase
let client: Client

beforeAll(async () => {
  fresh = await createTestDatabase()
  client = new Client({ connectionString: fresh.url })
  await client.connect()
})

afterAll(async () => {
  await client.end()
  await fresh.drop()
})

describe('constraints', () => {
  it('all have an entry in the table of errors, and the table has no other', async () => {
    const names = await column(`
      select conname from pg_constraint join pg_class on pg_class.oid = conrelid
        where connamespace = 'public'::regnamespace and contype <> 'n' and relname <> '_prisma_migrations'
      union select indexname from pg_indexes
        where schemaname = 'public' and indexdef like 'CREATE UNIQUE%' and tablename <> '_prisma_migrations'
      union select tgname from pg_trigger where tgfoid = 'refuse_change'::regproc and tgname like '%append_only'
      union select tgname from pg_trigger where tgfoid = 'keep_an_owner'::regproc`)
    expect(names.length).toBeGreaterThan(80)
    expect(Object.keys(constraintErrors).sort()).toEqual(names.sort())
  })

  it('name errors that the contract lists', () => {
    expect(Object.values(constraintErrors).filter((code) => !isErrorCode(code))).toEqual([])
  })

  it('and indexes are named <table>__<what>', async () => {
    const misnamed = await column(`
      select conname from pg_constraint join pg_class on pg_class.oid = conrelid
        where connamespace = 'public'::regnamespace and contype <> 'n' and relname <> '_prisma_migrations'
          and not starts_with(conname, relname || '__')
      union select indexname from pg_indexes
        where schemaname = 'public' and tablename <> '_prisma_migrations'
          and not starts_with(indexname, tablename || '__')`)
    expect(misnamed).toEqual([])
  })

  it('begin with the shop wherever they are keys or foreign keys', async () => {
    const without = await column(`
      select conname from pg_constraint
        join pg_class on pg_class.oid = conrelid
        join pg_attribute on attrelid = conrelid and attnum = conkey[1]
      where connamespace = 'public'::regnamespace and contype in ('p', 'f') and attname <> 'shop_id'
        and relname not in ('shops', '_prisma_migrations')`)
    expect(without).toEqual([])
  })
})

describe('the drift check', () => {
  it('finds none between the migrations and the schema', async () => {
    expect(await driftOfMigrations(fresh.url)).toEqual([])
  })

  const changes: readonly [string, string, RegExp][] = [
    ['a column that the schema has not', 'alter table customers add column nickname text', /nickname/],
    [
      'a missing check',
      'alter table staff drop constraint staff__roles_known',
      /missing: .*staff__roles_known/,
    ],
    ['a missing trigger', 'drop trigger entries__append_only on entries', /missing: .*entries__append_only/],
    [
      'a trigger that is switched off',
      'alter table entries disable trigger entries__append_only',
      /foreign: .*entries__append_only.*switched off/s,
    ],
    ['a missing partial index', 'drop index order_heads__open', /missing: .*order_heads__open/],
    [
      'a trigger function that was emptied',
      'create or replace function refuse_change() returns trigger language plpgsql as $$ begin return new; end $$',
      /foreign: function refuse_change/,
    ],
  ]
  for (const [what, statement, expected] of changes) {
    it(`finds ${what}`, async () => {
      const changed = await createTestDatabase()
      try {
        expect(await driftOfDatabase(changed.url, fresh.url)).toEqual([])
        await run(changed.url, statement)
        expect((await driftOfDatabase(changed.url, fresh.url)).join('\n')).toMatch(expected)
      } finally {
        await changed.drop()
      }
    })
  }
})

async function column(query: string): Promise<string[]> {
  const { rows } = await client.query<[string]>({ text: query, rowMode: 'array' })
  return rows.map(([name]) => name)
}

async function run(url: string, statement: string): Promise<void> {
  const other = new Client({ connectionString: url })
  await other.connect()
  await other.query(statement)
  await other.end()
}
