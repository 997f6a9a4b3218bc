import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { keepReads, type ReadStore } from './reads.ts'

const schemas = new Map<unknown, z.ZodMiniType>([
  ['floor', z.strictObject({ rows: z.array(z.string()) })],
  ['orders', z.strictObject({ seq: z.int() })],
])
const schemaOf = ([first]: readonly unknown[]) => schemas.get(first) ?? null

/** A disk whose writing takes its time. */
const disk = () => {
  const rows = new Map<string, unknown>()
  let writes = 0
  const store: ReadStore = {
    load: async () => new Map(rows),
    keep: async (name, value) => {
      await Promise.resolve()
      writes += 1
      rows.set(name, structuredClone(value))
    },
    drop: async (name) => void rows.delete(name),
  }
  return { store, rows, writes: () => writes }
}

const order = (id: string, seq: number) => ({ key: ['orders', id], data: { seq }, readAt: seq })

describe('what a tablet keeps of the server’s replies', () => {
  it('is the newest of each key, written once for many that come in a row', async () => {
    const { store, writes } = disk()
    const reads = keepReads(store, schemaOf, 'kinds 1')
    for (const seq of [1, 2, 3]) reads.keep(order('a', seq))
    reads.keep(order('b', 7))
    await reads.settled()
    reads.keep(order('a', 4))
    await reads.settled()
    expect(writes()).toBe(3)
    expect(await keepReads(store, schemaOf, 'kinds 1').load()).toEqual([order('a', 4), order('b', 7)])
  })

  it('is erased when it is dropped, also while it is being written', async () => {
    const { store, rows } = disk()
    const reads = keepReads(store, schemaOf, 'kinds 1')
    reads.keep(order('a', 1))
    await Promise.resolve()
    reads.drop(['orders', 'a'])
    await reads.settled()
    expect(rows.size).toBe(0)
  })

  it('is nothing that no schema is known for', async () => {
    const { store, rows } = disk()
    const reads = keepReads(store, schemaOf, 'kinds 1')
    reads.keep({ key: ['prices'], data: 1, readAt: 1 })
    await reads.settled()
    expect(rows.size).toBe(0)
  })

  it.each([
    ['that another program wrote for other kinds of entry', { ledger: 'kinds 2' }],
    ['whose shape is another one', { data: { seq: 'one' } }],
    ['with something in it that this program does not know', { data: { seq: 1, more: true } }],
    ['under a key that is not kept', { key: ['prices'] }],
  ])('is not what lies there %s: it is dropped, not misread', async (_, change) => {
    const { store, rows } = disk()
    const sound = { ...order('a', 1), ledger: 'kinds 1' }
    await store.keep('sound', sound)
    await store.keep('other', { ...sound, ...change })
    await store.keep('no envelope', 'text')
    expect(await keepReads(store, schemaOf, 'kinds 1').load()).toEqual([order('a', 1)])
    expect([...rows.keys()]).toEqual(['sound'])
  })
})
