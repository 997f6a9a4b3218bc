import type { Entry } from '@bayledger/ledger/entry'
import { keptMoney } from '../../packages/ledger/test-support/money.ts'
import { wrench } from '../../packages/ledger/test-support/shop.ts'
import {
  type HeadRowAsked,
  type NewEntryRow,
  type StoredRow,
  storedEntry,
  storedRow,
} from './database-rows.ts'
import { sheetBody, shopFactsRow } from './shop-tables.ts'

/** What a statement brings: its name stands for its text, which the simulation does not read. */
export type Statement = { readonly name: string; readonly values: readonly unknown[] }

export type Session = { readonly deviceId: string | null; isOver: boolean }

export type Proof = {
  readonly staffId: string
  readonly orderId: string
  readonly entryId: string
  readonly kind: string
  readonly digest: string
  readonly until: string
}

type Order = { readonly number: string; seq: number; hash: string; readonly rows: StoredRow[] }

/**
 * What the servers share: the rows that the named statements of the entries' stores read and write, with the same guards
 * and the same keys as in PostgreSQL. A statement is done whole or not at all.
 */
export type Database = {
  /** Does one statement. Throws what PostgreSQL would answer where a key is broken. */
  readonly run: (statement: Statement) => readonly unknown[]
  readonly sessions: Map<string, Session>
  readonly proofs: Map<string, Proof>
  /** Something of the shop's registers has changed. */
  readonly changeFacts: () => void
  readonly isRefused: (entryId: string) => boolean
  readonly holds: (entryId: string) => boolean
  readonly orderIds: () => readonly string[]
  readonly headOf: (orderId: string) => { readonly seq: number; readonly hash: string } | null
}

export type DatabaseWatcher = {
  /** Entries that were just written, in order. */
  readonly written: (orderId: string, entries: readonly Entry[]) => void
  readonly refused: (entryId: string) => void
}

/** A database that holds these orders already. */
export const newDatabase = (
  watcher: DatabaseWatcher,
  begun: readonly (readonly Entry[])[] = [],
): Database => {
  const orders = new Map(begun.map((entries, index) => orderOf(entries, index + 1)))
  const placeOf = new Map(begun.flat().map(({ id, orderId }) => [id, orderId]))
  const refused = new Map<string, object>()
  const sides = new Map<string, { readonly side: string; readonly text: string }>()
  const sessions = new Map<string, Session>()
  const proofs = new Map<string, Proof>()
  const holders = new Map<string, Set<string>>()
  let factsVersion = 1
  let nextNumber = begun.length + 1
  let cycles = wrench.cyclesBefore

  const isGuarded = (head: HeadRowAsked): boolean =>
    head.entry_ids.every((id) => !placeOf.has(id) && !refused.has(id)) &&
    head.facts_version === factsVersion &&
    head.session_ids.every((id) => sessions.get(id)?.isOver === false)

  const moves = (name: string, head: HeadRowAsked): boolean => {
    const order = orders.get(head.order_id)
    if (name === 'open')
      return order === undefined && (head.next === null || head.next === nextNumber) && isGuarded(head)
    return (
      order !== undefined && order.seq === head.after && order.hash === head.after_hash && isGuarded(head)
    )
  }

  const checkKeys = (rows: readonly NewEntryRow[]): void => {
    for (const { id, order_id, seq } of rows) {
      if (placeOf.has(id)) throw brokenKey('entries__id')
      if (orders.get(order_id)?.rows[seq - 1]) throw brokenKey('entries__pk')
    }
  }

  const write = (name: string, values: readonly unknown[]): readonly unknown[] => {
    const [does = '', ...parts] = name.split(' ')
    const read = values.map((text) => JSON.parse(text as string) as unknown[])
    const moved = (read[0] as HeadRowAsked[]).filter((head) => moves(does, head))
    const ids = new Set(moved.map(({ order_id }) => order_id))
    const rowsOf = <Row>(part: string): Row[] =>
      ((read[parts.indexOf(part) + 1] ?? []) as (Row & { order_id: string })[]).filter(({ order_id }) =>
        ids.has(order_id),
      )
    const entries = rowsOf<NewEntryRow>('entry')
    checkKeys(entries)
    for (const head of moved) {
      const { number, order_id, seq, hash } = head
      const order = orders.get(order_id) ?? { number: number ?? '', seq: 0, hash: '', rows: [] }
      order.seq = seq
      order.hash = hash
      orders.set(order_id, order)
      if (does === 'open') nextNumber += 1
    }
    for (const row of entries) {
      orders.get(row.order_id)?.rows.push(storedRow(row))
      placeOf.set(row.id, row.order_id)
    }
    for (const side of ['personal', 'contact', 'money', 'shown'])
      if (parts.includes(side))
        for (const { digest, text } of rowsOf<{ digest: string; text: string }>(side))
          if (!sides.has(`${side} ${digest}`)) sides.set(`${side} ${digest}`, { side, text })
    if (parts.includes('cycle'))
      for (const { clicks } of rowsOf<{ clicks: number }>('cycle')) cycles += clicks
    for (const orderId of ids)
      watcher.written(
        orderId,
        entries.filter(({ order_id }) => order_id === orderId).map(({ id }) => entryAt(orderId, id)),
      )
    return moved.map(({ shop_id, order_id }) => ({ shop_id, order_id }))
  }

  const entryAt = (orderId: string, id: string): Entry => {
    const row = orders.get(orderId)?.rows.find((one) => one.row.id === id)
    if (!row) throw new Error(`entry ${id} was just written and is not there`)
    return row.entry
  }

  const readers: Readonly<Record<string, (values: readonly unknown[]) => readonly unknown[]>> = {
    'ledger-after': ([, orderId, after]) => {
      const order = orders.get(orderId as string)
      const head = { head_seq: order?.seq ?? null, head_hash: order?.hash ?? null }
      const rows = order?.rows.slice(after as number) ?? []
      return rows.length === 0 ? [{ ...head, id: null }] : rows.map(({ row }) => ({ ...head, ...row }))
    },
    'entry-by-id': ([, id]) => {
      const orderId = placeOf.get(id as string)
      const found = orderId && orders.get(orderId)?.rows.find(({ row }) => row.id === id)
      return found ? [found.row] : []
    },
    'shop-facts': () => [shopFactsRow(factsVersion, cycles)],
    'entry-facts': ([, restsOn, , , wrenchIds, tokens, sheetId]) => [
      {
        second_persons: (tokens as string[]).flatMap((token) => proofs.get(token) ?? []),
        tablet_key: null,
        refused: (restsOn as string[]).filter((id) => refused.has(id)),
        sheet: sheetId === null ? null : sheetBody,
        ids_elsewhere: null,
        cycles: (wrenchIds as string[]).map((id) => ({ id, cycles })),
      },
    ],
    'hold-order': ([, orderId, deviceId]) => {
      const held = holders.get(orderId as string) ?? new Set()
      holders.set(orderId as string, held.add(deviceId as string))
      return [{ alone: held.size === 1 }]
    },
    'peek-order-number': () => [{ series: 'S', next: nextNumber }],
    'earlier-orders': () => [],
    'earlier-visits': () => [],
    // Each vehicle here is of the customer for whom its orders are opened.
    'is-of-customer': () => [{ is: true }],
    // No tablet is put out here: every one that asks is let in.
    stale: ([, sessionIds, entryIds, , deviceIds]) => [
      {
        tablets: deviceIds,
        sessions: (sessionIds as string[]).filter((id) => sessions.get(id)?.isOver === false),
        refused: (entryIds as string[]).filter((id) => refused.has(id)),
        taken: (entryIds as string[]).flatMap((id) => {
          const order = placeOf.get(id)
          return order === undefined ? [] : [{ id, order }]
        }),
      },
    ],
    sides: ([, kinds, digests]) =>
      (digests as string[]).flatMap((digest, index) => {
        const side = (kinds as string[])[index] ?? ''
        const text = sides.get(`${side} ${digest}`)?.text ?? onFile(side, digest)
        return text === undefined ? [] : [{ side, digest, text }]
      }),
    'find-refused': ([, id]) => {
      const found = refused.get(id as string)
      return found ? [found] : []
    },
    'keep-refused': ([, id, orderId, kind, body, code, values, receivedAt, writtenBy]) => {
      if (refused.has(id as string) || placeOf.has(id as string)) return []
      refused.set(id as string, {
        id,
        orderId,
        orderNumber: orders.get(orderId as string)?.number ?? null,
        kind,
        code,
        values: JSON.parse(values as string),
        receivedAt,
        writtenBy: JSON.parse(writtenBy as string),
        body: JSON.parse(body as string),
      })
      watcher.refused(id as string)
      return [{ id }]
    },
  }

  return {
    run: ({ name, values }) => {
      if (name.startsWith('append ') || name.startsWith('open ')) return write(name, values)
      const read = readers[name]
      if (!read) throw new Error(`the simulated database does not know the statement "${name}"`)
      return read(values)
    },
    sessions,
    proofs,
    changeFacts: () => {
      factsVersion += 1
    },
    isRefused: (entryId) => refused.has(entryId),
    holds: (entryId) => placeOf.has(entryId),
    orderIds: () => [...orders.keys()],
    headOf: (orderId) => orders.get(orderId) ?? null,
  }
}

const orderOf = (entries: readonly Entry[], number: number): [string, Order] => {
  const last = entries.at(-1)
  if (!last) throw new RangeError('an order has no entry')
  const { orderId, seq, hash } = last
  return [orderId, { number: String(number), seq, hash, rows: entries.map(storedEntry) }]
}

/** Personal words and prices that the pens name by their digests alone were sent before, by nobody who matters here. */
const onFile = (side: string, digest: string): string | undefined =>
  side === 'money' ? keptMoney.get(digest) : 'words that were sent before'

const brokenKey = (constraint: string): Error =>
  Object.assign(new Error(`duplicate key value violates unique constraint "${constraint}"`), {
    code: '23505',
    constraint,
  })
