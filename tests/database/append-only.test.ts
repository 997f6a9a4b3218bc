import { randomUUID } from 'node:crypto'
import { Client } from 'pg'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'

const HASH = 'a'.repeat(64)
const ZEROS = '0'.repeat(64)

let database: TestDatabase
let client: Client
const shop = randomUUID()
const order = randomUUID()

beforeAll(async () => {
  database = await createTestDatabase()
  client = new Client({ connectionString: database.url })
  await client.connect()
  const [location, customer, vehicle, sheet] = [randomUUID(), randomUUID(), randomUUID(), randomUUID()]
  await client.query(`insert into shops (id, name) values ($1, 'Tamber Street')`, [shop])
  await client.query(
    `insert into locations (shop_id, id, name, altitude_feet, law_profile, time_zone)
     values ($1, $2, 'Front', 640, '{}', 'America/Chicago')`,
    [shop, location],
  )
  await client.query(
    `insert into customers (shop_id, id, name, phone) values ($1, $2, 'Ada Moll', '(555) 010-0142')`,
    [shop, customer],
  )
  await client.query(
    `insert into vehicles (shop_id, id, customer_id, plate, description) values ($1, $2, $3, 'abc-1234', 'blue van')`,
    [shop, vehicle, customer],
  )
  await client.query(
    `insert into order_heads (shop_id, order_id, location_id, number, seq, hash, customer_id, vehicle_id, opened_at,
       waits_here, is_open, sealed, agenda, updated_at)
     values ($1, $2, $3, 'T-1', 1, $4, $5, $6, now(), true, true, false, '[]', now())`,
    [shop, order, location, HASH, customer, vehicle],
  )
  await insertEntry(1, randomUUID(), ZEROS)
  await client.query('insert into sheets (shop_id, id) values ($1, $2)', [shop, sheet])
  await client.query(
    `insert into sheet_versions (shop_id, sheet_id, version, body, created_by, created_at)
     values ($1, $2, 1, '{}', '{}', now())`,
    [shop, sheet],
  )
  await client.query(
    `insert into setting_versions (shop_id, id, kind, version, body, created_by, created_at)
     values ($1, $2, 'prices', 1, '{}', '{}', now())`,
    [shop, randomUUID()],
  )
  await client.query(
    `insert into record_versions (shop_id, subject, subject_id, version, body, created_by, created_at)
     values ($1, 'place', $2, 1, '{}', '{}', now())`,
    [shop, location],
  )
})

afterAll(async () => {
  await client.end()
  await database.drop()
})

describe('tables that are written once', () => {
  for (const table of ['entries', 'sheet_versions', 'setting_versions', 'record_versions']) {
    for (const statement of [
      `update ${table} set version = version + 1`,
      `delete from ${table}`,
      `truncate ${table} cascade`,
    ]) {
      it(`refuses "${statement}" and keeps its rows`, async () => {
        const error = await failureOf(client.query(statement))
        expect(error).toMatchObject({ code: '23001', constraint: `${table}__append_only` })
        const { rows } = await client.query(`select version from ${table}`)
        expect(rows).toEqual([{ version: 1 }])
      })
    }
  }
})

describe('an order’s entries', () => {
  it('cannot take one number twice', async () => {
    expect(await failureOf(insertEntry(1, randomUUID(), ZEROS))).toMatchObject({ constraint: 'entries__pk' })
  })

  it('cannot take one id twice in a shop', async () => {
    const id = randomUUID()
    await insertEntry(2, id, HASH)
    expect(await failureOf(insertEntry(3, id, HASH))).toMatchObject({ constraint: 'entries__id' })
  })

  it('begin with no hash before, and only they', async () => {
    const error = await failureOf(insertEntry(3, randomUUID(), ZEROS))
    expect(error).toMatchObject({ constraint: 'entries__first_has_none_before' })
  })

  it('keep the text of their payload as it came', async () => {
    const { rows } = await client.query('select payload::text from entries where seq = 1')
    expect(rows).toEqual([{ payload: '{"b":1.0,"a":"é"}' }])
  })
})

describe('what searches look through', () => {
  const tokens = async (kind: string) =>
    (await client.query('select token from search_tokens where kind = $1 order by token', [kind])).rows.map(
      ({ token }) => token,
    )

  it('is filled by the database from name, phone, plate and description, and follows what changes', async () => {
    expect(await tokens('name')).toEqual(['ada moll', 'moll ada'])
    expect(await tokens('phone')).toEqual(['2410010555', '5550100142'])
    expect(await tokens('plate')).toEqual(['1234', '234', '34', 'ABC1234', 'BC1234', 'C1234'])
    expect(await tokens('model')).toEqual(['blue van', 'van'])
    await client.query(`update customers set name = 'Ada  MØLLER-Štásny'`)
    expect(await tokens('name')).toEqual(['ada moller stasny', 'moller stasny ada', 'stasny ada moller'])
    await client.query(`update customers set name = 'Ada Moll'`)
  })

  it('holds the whole number of a tire that an order saw, and no date code alone', async () => {
    const see = (seq: number, text: string) =>
      client.query(
        `insert into entries (shop_id, order_id, seq, id, kind, version, payload, given, written_by, written_at,
           received_at, previous_hash, hash)
         values ($1, $2, $3, $4, 'tire.inspected', 1, $5, '{}', '{}', now(), now(), $6, $6)`,
        [shop, order, seq, randomUUID(), { dateCodeSeen: { readable: true, text } }, HASH],
      )
    await see(101, '2520')
    await see(102, 'DOT 1a4 2BCDEF 2520')
    expect(await tokens('tin')).toEqual(['0252FEDCB24A1', '1A42BCDEF2520'])
  })
})

function insertEntry(seq: number, id: string, previousHash: string): Promise<unknown> {
  return client.query(
    `insert into entries (shop_id, order_id, seq, id, kind, version, payload, given, written_by, written_at,
       received_at, previous_hash, hash)
     values ($1, $2, $3, $4, 'note.added', 1, '{"b":1.0,"a":"é"}', '{}', '{}', now(), now(), $5, $6)`,
    [shop, order, seq, id, previousHash, HASH],
  )
}

async function failureOf(work: Promise<unknown>): Promise<unknown> {
  try {
    await work
  } catch (error) {
    return error
  }
  return undefined
}
