import { randomUUID } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { chainEntry } from '@bayledger/ledger/append'
import type { Draft, Entry } from '@bayledger/ledger/entry'
import { fold } from '@bayledger/ledger/fold'
import { kindNames } from '@bayledger/ledger/registry'
import fc from 'fast-check'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { projectHead } from '../../apps/api/src/features/entries/store/projections/head.ts'
import { listEntriesAfter } from '../../apps/api/src/features/entries/store/read-ledger.ts'
import { writeEntries } from '../../apps/api/src/features/entries/store/write-entries.ts'
import { startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { readBack } from '../support/read-back.ts'
import { replayOn } from '../support/replay-order.ts'

/** Payloads of every kind, of both versions that were ever frozen, as some shop once wrote them. */
const folder = `${import.meta.dirname}/../../packages/ledger/src/frozen`
const frozen = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .flatMap((file) => JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')) as Entry[])

let shop: TestApp
let opened: readonly Entry[]
let factsVersion: number
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  const { orderId, lines } = freshCopy(shop.demo, 'T-2601')
  await replay.sendUntil(lines.slice(0, 1))
  opened = await listEntriesAfter(shop.deps.pool, shop.demo.shop.id, orderId, 0)
  const { rows } = await shop.deps.pool.query('select facts_version from shops')
  factsVersion = rows[0].facts_version
})
afterAll(() => shop.stop())

/** The same payload with another text beside it and a number; its wrench is one of this shop's. */
const withMore = (payload: object, text: string, number: number): object => ({
  ...(JSON.parse(
    JSON.stringify(payload).replace(
      /"instrumentId":"[^"]+"/g,
      `"instrumentId":"${shop.demo.instruments[0]?.id}"`,
    ),
  ) as object),
  beside: { text, number },
})

it('an entry of any kind verifies when a fresh process reads it back, whatever its texts and numbers are', async () => {
  expect(new Set(frozen.map(({ kind }) => kind))).toEqual(new Set(kindNames))
  const shopId = shop.demo.shop.id
  let entries = [...opened]
  const text = fc.oneof(
    fc.string({ unit: 'grapheme' }),
    fc.constantFrom('Jose\u0301', 'José', '\u1e9b\u0323', 'ﬁn', '🔧'),
  )
  const number = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer())
  await fc.assert(
    fc.asyncProperty(fc.infiniteStream(text), fc.infiniteStream(number), async (texts, numbers) => {
      const written: Entry[] = []
      for (const { kind, version, payload, restsOn, writtenBy, writtenAt } of frozen) {
        const last = written.at(-1) ?? entries.at(-1)
        if (!last) throw new Error('the order was never opened')
        const draft = {
          id: randomUUID(),
          shopId,
          orderId: last.orderId,
          kind,
          version,
          payload: withMore(payload, texts.next().value, numbers.next().value),
          restsOn,
          writtenBy,
          deviceId: null,
          writtenAt,
        } as unknown as Draft
        written.push(chainEntry(draft, last, { at: shop.clock.now().toISOString(), given: {} }))
      }
      const write = {
        shopId,
        orderId: written[0]?.orderId ?? '',
        after: entries.length,
        entries: written,
        head: projectHead(fold(opened), shop.clock.now().toISOString()),
        entryById: () => undefined,
        sides: [],
        messages: [],
        factsVersion,
        authorities: [],
      }
      expect((await writeEntries(shop.deps.pool, [write])).size).toBe(1)
      entries = [...entries, ...written]
      const { entries: read, broken } = await readBack(shop.url, shopId)
      expect(broken).toEqual([])
      expect(read.map(({ hash }) => hash)).toEqual(entries.map(({ hash }) => hash))
    }),
    { seed: 20_260_112, numRuns: 8 },
  )
})
