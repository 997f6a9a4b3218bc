import { spawnSync } from 'node:child_process'
import { randomUUID } from 'node:crypto'
import { statSync } from 'node:fs'
import { join } from 'node:path'
import { openClient } from '@bayledger/db/client'
import { errorOfConstraint } from '@bayledger/db/constraint-errors'
import { openPool } from '@bayledger/db/pool'
import { inTransaction } from '@bayledger/db/transaction'
import type { Pool } from 'pg'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'

let database: TestDatabase
let pool: Pool

beforeAll(async () => {
  database = await createTestDatabase()
  pool = openPool({ url: database.url, size: 1, onIdleError: () => undefined })
})

afterAll(async () => {
  await pool.end()
  await database.drop()
})

describe('a transaction', () => {
  it('keeps all of its work, and hands back what the work returns', async () => {
    const id = randomUUID()
    const name = await inTransaction(pool, async (tx) => {
      await tx.query('insert into shops (id, name) values ($1, $2)', [id, 'kept'])
      return 'kept'
    })
    expect(await namesOf(id)).toEqual([name])
  })

  it('keeps none of its work when a part of it fails, and gives its connection back', async () => {
    const id = randomUUID()
    const failing = inTransaction(pool, async (tx) => {
      await tx.query('insert into shops (id, name) values ($1, $2)', [id, 'lost'])
      await tx.query('insert into shops (id, name) values ($1, $2)', [id, 'twice'])
    })
    const error: unknown = await failing.catch((reason: unknown) => reason)
    expect(error).toMatchObject({ constraint: 'shops__pk' })
    expect(errorOfConstraint('shops__pk')).toBe('INTERNAL_FAULT')
    expect(await namesOf(id)).toEqual([])
  })

  it('throws a broken connection away and the pool goes on with another', async () => {
    const failing = inTransaction(pool, async (tx) => {
      await tx.query('select pg_terminate_backend(pg_backend_pid())')
    })
    await expect(failing).rejects.toThrow(/terminat/)
    expect((await pool.query('select 1 as one')).rows).toEqual([{ one: 1 }])
  })
})

describe('the pool', () => {
  it('reads a day as the text it is, and an instant as an instant', async () => {
    const { rows } = await pool.query(
      `select date '2026-01-12' as day, timestamptz '2026-01-12T11:40:00.123Z' as at`,
    )
    expect(rows).toEqual([{ day: '2026-01-12', at: new Date('2026-01-12T11:40:00.123Z') }])
  })
})

describe('the Prisma client', () => {
  it('reads and writes through the same tables', async () => {
    const client = openClient(database.url)
    const id = randomUUID()
    await client.shop.create({ data: { id, name: 'Tamber Street' } })
    await client.customer.create({
      data: { shopId: id, id: randomUUID(), name: 'Ada Moll', phone: '555-0142' },
    })
    const found = await client.customer.findFirst({
      where: { shopId: id, phone: { contains: '0142' } },
    })
    expect(found).toMatchObject({ name: 'Ada Moll', version: 1 })
    await client.$disconnect()
  })

  it('is not written again while the schema stays the same', () => {
    const root = join(import.meta.dirname, '../..')
    const generate = () => spawnSync(process.execPath, [join(root, 'packages/db/src/commands/generate.ts')])
    const written = () => statSync(join(root, 'packages/db/src/generated/client.ts')).mtimeMs
    expect(generate().status).toBe(0)
    const before = written()
    const again = generate()
    expect(again.stdout.toString()).toBe('')
    expect(written()).toBe(before)
  })
})

async function namesOf(id: string): Promise<string[]> {
  const { rows } = await pool.query<{ name: string }>('select name from shops where id = $1', [id])
  return rows.map(({ name }) => name)
}
