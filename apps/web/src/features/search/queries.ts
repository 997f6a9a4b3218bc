import { search } from '@bayledger/contract/search'
import { keepPreviousData, queryOptions } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'

/** Fewer characters find too much to be of use; the service refuses them. */
export const shortestSearch = 2

/** What the desk's one box finds for a text; hits of the text before stay until the new ones are there. */
export const searchQuery = (text: string) =>
  queryOptions({
    queryKey: ['search', text],
    queryFn: ({ signal }) => call(search, { query: { q: text }, signal }),
    enabled: text.length >= shortestSearch,
    placeholderData: keepPreviousData,
  })
