import { QueryClient } from '@tanstack/react-query'

/** The bay keeps its last good answers: behind a lifted truck, yesterday's plan beats an empty screen. */
export const bayQueryClient = new QueryClient({
  defaultOptions: {
    queries: { staleTime: 5_000, gcTime: Number.POSITIVE_INFINITY, retry: 1, networkMode: 'always' },
  },
})
