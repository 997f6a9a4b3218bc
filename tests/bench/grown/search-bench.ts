import { setTimeout as sleep } from 'node:timers/promises'
import { shopId } from '../../../prisma/seeds/demo/places.ts'
import type { Connection } from '../connection.ts'
import type { RunningShop } from '../running-shop.ts'
import { percentile } from '../statistics.ts'
import type { Figure } from '../table.ts'
import { fillShop } from './fill-shop.ts'

const sizes = { small: 45_000, large: 450_000 } as const
/** So often each line is looked for; and so long after a key comes the next, as a quick typist types. */
const rounds = 12
const millisecondsAKey = 70

/**
 * Searching over HTTP in a shop of 45,000 and then 450,000 vehicles: whole lines of every kind one after the other, and one
 * desk typing lines with a search a key, whether or not the one before has answered. What is reported is the slow end of both
 * together.
 */
export const benchSearch = async (shop: RunningShop, progress: (line: string) => void): Promise<Figure[]> => {
  const { small, large } = sizes
  await fillShop(shop.pool, { shopId, from: 1, to: small, progress })
  const before = await slowEnd(shop, progress)
  await fillShop(shop.pool, { shopId, from: small + 1, to: large, progress })
  const after = await slowEnd(shop, progress)
  return [
    { name: 'search.45k.p95.ms', value: before, unit: 'ms', goal: null },
    { name: 'search.450k.p95.ms', value: after, unit: 'ms', goal: 20 },
    { name: 'search.growth.ratio', value: after / before, unit: 'times', goal: 1.5 },
  ]
}

const slowEnd = async (shop: RunningShop, progress: (line: string) => void): Promise<number> => {
  const lines = await linesToFind(shop)
  const desks = await shop.desks(12)
  const [desk] = desks
  if (!desk) throw new Error('no desk')
  for (const { typed } of lines) await timeOf(desk, typed)
  const times: number[] = []
  for (const { kind, typed } of lines) {
    const ofKind: number[] = []
    for (let round = 0; round < rounds; round += 1) ofKind.push(await timeOf(desk, typed))
    progress(
      `  ${kind}: p95 ${percentile(
        ofKind.toSorted((a, b) => a - b),
        0.95,
      ).toFixed(1)} ms`,
    )
    times.push(...ofKind)
  }
  const typing = await typeAll(
    desks,
    lines.map(({ typed }) => typed),
  )
  progress(
    `  typing: p95 ${percentile(
      typing.toSorted((a, b) => a - b),
      0.95,
    ).toFixed(1)} ms`,
  )
  return percentile(
    [...times, ...typing].toSorted((a, b) => a - b),
    0.95,
  )
}

const timeOf = async (desk: Connection, typed: string): Promise<number> => {
  const begun = performance.now()
  await desk.call('GET', `/api/search?q=${encodeURIComponent(typed)}`)
  return performance.now() - begun
}

/** Types every line letter by letter; each search goes out at its key, over the next connection. */
const typeAll = async (desks: readonly Connection[], lines: readonly string[]): Promise<number[]> => {
  const running = desks.map(() => Promise.resolve())
  const times: number[] = []
  let next = 0
  for (const line of lines)
    for (let length = 2; length <= line.length; length += 1) {
      const place = next % desks.length
      const desk = desks[place]
      next += 1
      if (!desk) throw new Error('no desk')
      running[place] = (running[place] ?? Promise.resolve()).then(async () => {
        times.push(await timeOf(desk, line.slice(0, length)))
      })
      await sleep(millisecondsAKey)
    }
  await Promise.all(running)
  return times
}

/** What is typed for a vehicle that was filled in, of each kind; the last finds nothing. */
const linesToFind = async ({ pool }: RunningShop) => {
  const { rows } = await pool.query<{
    plate: string
    vin: string
    description: string
    phone: string
    name: string
  }>(
    `select v.plate, v.vin, v.description, c.phone, c.name from vehicles v
      join customers c on c.shop_id = v.shop_id and c.id = v.customer_id
      where v.shop_id = $1 and v.vin like '%0012345'`,
    [shopId],
  )
  const [one] = rows
  if (!one) throw new Error('the filled vehicle is missing')
  const { rows: sensors } = await pool.query<{ token: string }>(
    `select token from search_tokens where shop_id = $1 and kind = 'sensor-id' order by subject_id, token limit 1`,
    [shopId],
  )
  const [given = '', family = ''] = one.name.split(' ')
  return [
    { kind: 'plate', typed: one.plate },
    { kind: 'part of a plate', typed: one.plate.replace(' ', '').slice(2, 6) },
    { kind: 'end of a VIN', typed: one.vin.slice(-8) },
    { kind: 'end of a phone number', typed: one.phone.slice(-4) },
    { kind: 'phone number', typed: one.phone },
    { kind: 'two letters', typed: family.slice(0, 2) },
    { kind: 'name', typed: family },
    { kind: 'name without accents', typed: one.name.normalize('NFD').replace(/\p{Mn}/gu, '') },
    { kind: 'family name first', typed: `${family} ${given}` },
    { kind: 'two beginnings', typed: `${family.slice(0, 4)} ${given.slice(0, 3)}` },
    { kind: 'name and model', typed: `${family} ${one.description.split(' ')[1] ?? ''}` },
    { kind: 'model', typed: one.description },
    { kind: 'order number', typed: 'G-12301' },
    { kind: 'end of a sensor ID', typed: (sensors[0]?.token ?? '').slice(-5) },
    { kind: 'nothing', typed: 'zzqx nobody' },
  ] as const
}
