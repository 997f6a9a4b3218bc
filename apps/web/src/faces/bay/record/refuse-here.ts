import type { ReplyOf } from '@bayledger/contract/endpoint'
import type { getSettings, listInstruments, listStock } from '@bayledger/contract/settings'
import type { listStaff } from '@bayledger/contract/staff'
import { usePrefetchQuery } from '@tanstack/react-query'
import { orderKey } from '../../../features/ledger/order-query.ts'
import { refusalProblem } from '../../../features/ledger/write-entries.ts'
import { staffQuery } from '../../../features/people/queries.ts'
import { instrumentsQuery, settingsQuery, stockQuery } from '../../../features/settings/queries.ts'
import type { OrderReply } from '../../../ledger/order.ts'
import type { Parcel } from '../../../ledger/parcel.ts'
import type { CallProblem } from '../../../lib/problem.ts'
import { bayQueryClient } from '../query-client.ts'

/** The ledger's rules and its words are fetched once, soon after the tablet is open, and stay. */
const admissionQuery = {
  queryKey: ['admission'],
  queryFn: async () => {
    const [{ refusedHere }, { refusals }, { refusalWords }] = await Promise.all([
      import('../../../ledger/admit-here.ts'),
      import('@bayledger/wording/en/refusals'),
      import('@bayledger/wording/refusals'),
    ])
    return {
      refusedHere,
      wordsOf: (refusal: Parameters<typeof refusalWords>[1]) => refusalWords(refusals, refusal),
    }
  },
  staleTime: Number.POSITIVE_INFINITY,
}

/** Reads early what the ledger's rules need to know, before the network may drop. */
export const usePrefetchAdmission = (): void => {
  usePrefetchQuery(admissionQuery)
  usePrefetchQuery(staffQuery)
  usePrefetchQuery(instrumentsQuery)
  usePrefetchQuery(stockQuery)
  usePrefetchQuery(settingsQuery)
}

const kept = <T>(queryKey: readonly unknown[]): T | undefined => bayQueryClient.getQueryData<T>(queryKey)

/**
 * What the ledger would say against a parcel, in its own words, as far as this tablet knows; `null`: nothing, or what it
 * takes to judge is not read yet, and the server says it.
 */
export const problemHere = (parcel: Parcel, onTop: readonly Parcel[]): CallProblem | null => {
  const admission = kept<Awaited<ReturnType<typeof admissionQuery.queryFn>>>(admissionQuery.queryKey)
  const order = kept<OrderReply>(orderKey(parcel.orderId))
  const staff = kept<ReplyOf<typeof listStaff>>(staffQuery.queryKey)?.staff
  const instruments = kept<ReplyOf<typeof listInstruments>>(instrumentsQuery.queryKey)?.instruments
  const stock = kept<ReplyOf<typeof listStock>>(stockQuery.queryKey)?.parts
  const locations = kept<ReplyOf<typeof getSettings>>(settingsQuery.queryKey)?.locations
  if (!admission || !order || !staff || !instruments || !stock || !locations) return null
  const now = new Date().toISOString()
  const refusal = admission.refusedHere(order, onTop, parcel, { now, staff, instruments, stock, locations })
  if (refusal === null) return null
  const { code, values } = refusal
  const [first] = parcel.entries
  return refusalProblem({
    result: 'refused',
    id: first?.id ?? '',
    code,
    values,
    words: admission.wordsOf(refusal),
    kept: false,
    fields: [],
  })
}
