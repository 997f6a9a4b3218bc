import { randomBytes, randomUUID } from 'node:crypto'
import type { AppendResult, SentSide } from '@bayledger/contract/entries'
import { sideDigest } from '@bayledger/ledger/digests'
import { type Kind, type PayloadOf, versionOf } from '@bayledger/ledger/registry'
import type { Caller, TestApp } from './app.ts'

export type WriteEntry = <K extends Kind>(
  caller: Caller,
  kind: K,
  payload: PayloadOf<K>,
  sides?: readonly SentSide[],
) => Promise<AppendResult & { readonly id: string }>

/** Writes entries to one order over HTTP, each with an id of its own. */
export const writerOn =
  (shop: Pick<TestApp, 'clock'>, orderId: string): WriteEntry =>
  async (caller, kind, payload, sides = []) => {
    const id = randomUUID()
    const writtenAt = shop.clock.now().toISOString()
    const entry = { id, orderId, kind, version: versionOf(kind), payload, writtenAt, restsOn: [] }
    const { body } = await caller.post('/api/entries', { entries: [entry], sides }).expect(200)
    return { ...body.results[0], id }
  }

/** A text as it is sent beside an entry. */
export const sideOf = (text: string): SentSide => {
  const salt = randomBytes(32)
  return { digest: sideDigest(text, salt), salt: salt.toString('base64'), text }
}

/** Sums of money as they are sent beside an entry. */
export const moneyOf = (content: object): SentSide => sideOf(JSON.stringify(content))
