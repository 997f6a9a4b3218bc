import { type AppendResult, appendEntries, type SentSide } from '@bayledger/contract/entries'
import type { Agreeable } from '@bayledger/ledger/agreement'
import { useMutation, useQueryClient } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'
import { CallProblem } from '../../lib/problem.ts'
import type { WrittenDraft } from './draft-entry.ts'
import { catchUpOrder } from './order-query.ts'
import { proveEntry } from './prove-entry.ts'

export type Writing = {
  readonly entries: readonly WrittenDraft[]
  readonly sides?: readonly SentSide[]
  /** Of the second person whom the entries name. */
  readonly pin?: string
}

/**
 * Sends entries in order. The first that is refused throws a `CallProblem` with the ledger's own words; those
 * before it are kept. The same entries may be sent again: the server answers those it has as known.
 */
export const sendEntries = async ({ entries, sides = [], pin }: Writing): Promise<AppendResult[]> => {
  const proven =
    pin === undefined
      ? entries
      : await Promise.all(entries.map((entry) => proveEntry(entry as Agreeable, pin)))
  const { results } = await call(appendEntries, {
    body: { entries: proven as WrittenDraft[], sides: [...sides] },
  })
  const refused = results.find((result) => result.result === 'refused' || result.result === 'not-yet')
  if (refused) throw refusalProblem(refused)
  return results
}

const refusalProblem = (refused: Extract<AppendResult, { words: string }>): CallProblem =>
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
