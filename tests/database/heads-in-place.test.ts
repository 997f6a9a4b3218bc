import { randomBytes, randomUUID } from 'node:crypto'
import { withClient } from '@bayledger/db/with-client'
import { sideDigest } from '@bayledger/ledger/digests'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  await replay.sendUntil(freshCopy(shop.demo, 'T-2602').lines)
  const ending = freshCopy(shop.demo, 'T-2602')
  await replay.sendUntil(ending.lines, ({ draft }) => draft.kind === 'complaint.recorded')
  const salt = randomBytes(32)
  const text = 'The customer drove home.'
  const words = sideDigest(text, salt)
  const desk = await replay.as('ottoline', 'desk')
  const withdrawn = {
    id: randomUUID(),
    orderId: ending.orderId,
    kind: 'order.withdrawn',
    version: 1,
    payload: { reason: 'customer', words },
    writtenAt: shop.clock.now().toISOString(),
    restsOn: [],
  }
  const sides = [{ digest: words, salt: salt.toString('base64'), text }]
  await desk.post('/api/entries', { entries: [withdrawn], sides }).expect(200)
})
afterAll(() => shop.stop())

/** What an append changes of a head that stays open, wherever its order stands. */
const changedByEveryAppend = ['seq', 'hash', 'agenda', 'updated_at']

const inOwnersWords = (text: string) =>
  withClient(shop.ownerUrl, async (owner) => (await owner.query(text)).rows)

describe('the head of an order', () => {
  it('is written without its indexes: none names what every append changes', async () => {
    const indexed = await inOwnersWords(
      `select distinct a.attname as name from pg_index i
        join pg_attribute a on a.attrelid = i.indrelid
        where i.indrelid = 'order_heads'::regclass
          and (a.attnum = any (i.indkey) or pg_get_expr(i.indexprs, i.indrelid) ~ ('\\m' || a.attname || '\\M')
            or pg_get_expr(i.indpred, i.indrelid) ~ ('\\m' || a.attname || '\\M'))`,
    )
    const names = indexed.map(({ name }) => name)
    expect(names).toContain('is_open')
    expect(names.filter((name) => changedByEveryAppend.includes(name))).toEqual([])
  })

  it('has room on its page for its next version', async () => {
    expect(
      await inOwnersWords("select reloptions from pg_class where oid = 'order_heads'::regclass"),
    ).toEqual([{ reloptions: ['fillfactor=70'] }])
  })

  it('says when its order ended, and nothing while it is open', async () => {
    const heads = await inOwnersWords('select is_open, ended_at, updated_at from order_heads')
    expect(new Set(heads.map(({ is_open }) => is_open))).toEqual(new Set([true, false]))
    for (const { is_open, ended_at, updated_at } of heads)
      expect(ended_at).toEqual(is_open ? null : updated_at)
    await expect(inOwnersWords('update order_heads set ended_at = now() where is_open')).rejects.toThrow(
      'order_heads__ended_when_over',
    )
  })
})

describe('a digest', () => {
  it('is 64 small hexadecimal digits, in every table that has one', async () => {
    const accepted = async (column: string, check: string) =>
      (
        await inOwnersWords(
          `select word from unnest(array[repeat('0f', 32), repeat('0F', 32), repeat('0g', 32), repeat('0', 63), repeat('0', 65),
            repeat('0', 63) || ' ', '']) word
            where (select ${check.replaceAll(/\b(?:hash|previous_hash|digest)\b/g, column)} from (select word as ${column}) one)`,
        )
      ).map(({ word }) => word)
    const checks = await inOwnersWords(
      `select conname as name, pg_get_expr(conbin, conrelid) as check from pg_constraint
        where conname ~ '(order_heads|entries|personal_texts|contact_sides|money_sides|shown_sides)__(hash|digest)_is_digest'`,
    )
    expect(checks).toHaveLength(6)
    for (const { name, check } of checks)
      expect(await accepted('word', check), name).toEqual(['0f'.repeat(32)])
  })
})
