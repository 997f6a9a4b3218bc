import { QueryClient } from '@tanstack/react-query'
import { retryWhenOutOfReach } from '../../lib/retry.ts'

/** The bay keeps its last good answers: behind a lifted truck, yesterday's plan beats an empty screen. */
export const bayQueryClient = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: 5_000,
      gcTime: Number.POSITIVE_INFINITY,
      retry: retryWhenOutOfReach,
      networkMode: 'always',
    },
  },
})
