import { type AppendResult, appendEntries, type Heard, type SentSide } from '@bayledger/contract/entries'
import type { Agreeable } from '@bayledger/ledger/agreement'
import type { DraftEnvelope } from '@bayledger/ledger/entry'
import { useMutation, useQueryClient } from '@tanstack/react-query'
import { isNotTaken, type NotTaken } from '../../ledger/delivery.ts'
import { call } from '../../lib/api-client.ts'
import { CallProblem } from '../../lib/problem.ts'
import { catchUpOrder } from './order-query.ts'
import { proveEntry } from './prove-entry.ts'

export type Writing = {
  readonly entries: readonly DraftEnvelope[]
  readonly sides?: readonly SentSide[]
  /** What their writer had heard of the order; left out: everything. */
  readonly heard?: Heard
  /** Of the second person whom the entries name. */
  readonly pin?: string
}

/**
 * Delivers entries in order and gives what became of each. The same entries may be sent again: the server answers those
 * it has as known. Throws a `CallProblem` where the server does not take the delivery as a whole.
 */
export const deliverEntries = async ({
  entries,
  sides = [],
  heard,
  pin,
}: Writing): Promise<AppendResult[]> => {
  const proven =
    pin === undefined
      ? entries
      : await Promise.all(entries.map((entry) => proveEntry(entry as DraftEnvelope & Agreeable, pin)))
  const { results } = await call(appendEntries, {
    body: { entries: [...proven], sides: [...sides], ...(heard === undefined ? {} : { heard }) },
  })
  return results
}

/** Delivers entries; the first that is not taken throws a `CallProblem` with the ledger's own words. */
export const sendEntries = async (writing: Writing): Promise<AppendResult[]> => {
  const results = await deliverEntries(writing)
  const refused = results.find(isNotTaken)
  if (refused) throw refusalProblem(refused)
  return results
}

/** What a person reads of an entry that was not taken. */
export const refusalProblem = (refused: NotTaken): CallProblem =>
  new CallProblem({
    status: 422,
    code: 'ENTRY_REFUSED',
    title: refused.result === 'refused' ? 'This was not taken into the ledger.' : 'This has to wait.',
    detail: refused.words,
    ...(refused.result === 'refused' && refused.fields.length > 0 ? { fields: refused.fields } : {}),
    ...(refused.result === 'refused' ? { reason: refused.code } : {}),
  })

/**
 * Writes to one order and reads what it gained, whatever came of it: a refusal may mean that someone was first. The
 * floor list follows by the wake-up.
 */
export const useWriteEntries = (orderId: string) => {
  const client = useQueryClient()
  return useMutation({
    mutationFn: sendEntries,
    onSettled: () => catchUpOrder(client, orderId),
  })
}
