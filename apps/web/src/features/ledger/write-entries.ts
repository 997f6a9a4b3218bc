import { type AppendResult, appendEntries, type SentSide } from '@bayledger/contract/entries'
import { useMutation, useQueryClient } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'
import { CallProblem } from '../../lib/problem.ts'
import type { WrittenDraft } from './draft-entry.ts'
import { orderKey } from './order-query.ts'

export type Writing = { readonly entries: readonly WrittenDraft[]; readonly sides?: readonly SentSide[] }

/**
 * Sends entries in order. The first that is refused throws a `CallProblem` with the ledger's own words; those
 * before it stand. The same writing may be sent again: what the server already has, it answers as known.
 */
export const sendEntries = async ({ entries, sides = [] }: Writing): Promise<AppendResult[]> => {
  const { results } = await call(appendEntries, { body: { entries: [...entries], sides: [...sides] } })
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

/** Writes to one order and reads it again, whatever came of it: a refusal may mean that someone was first. */
export const useWriteEntries = (orderId: string) => {
  const client = useQueryClient()
  return useMutation({
    mutationFn: sendEntries,
    onSettled: () =>
      Promise.all([
        client.invalidateQueries({ queryKey: orderKey(orderId) }),
        client.invalidateQueries({ queryKey: ['floor'] }),
      ]),
  })
}
