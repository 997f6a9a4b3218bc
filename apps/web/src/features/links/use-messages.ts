import { listMessages } from '@bayledger/contract/messages'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { useEffect } from 'react'
import { call } from '../../lib/api-client.ts'
import { linksQuery } from './queries.ts'

/**
 * An order's messages, looked at again while one waits: what becomes of a message is no entry, and wakes nobody. A message that
 * went has made a link, so that the links are read again then.
 */
export const useMessages = (orderId: string) => {
  const client = useQueryClient()
  const messages = useQuery({
    queryKey: ['orders', orderId, 'messages'],
    queryFn: ({ signal }) => call(listMessages, { params: { orderId }, signal }),
    refetchInterval: ({ state }) => (state.data?.messages.some(isWaiting) ? 5_000 : false),
  })
  const settled = messages.data?.messages.filter((message) => !isWaiting(message)).length ?? 0
  useEffect(() => {
    if (settled > 0) void client.invalidateQueries({ queryKey: linksQuery(orderId).queryKey })
  }, [client, orderId, settled])
  return messages
}

const isWaiting = ({ state }: { readonly state: string }): boolean => state === 'waiting'
