import { MutationCache, QueryCache, QueryClient } from '@tanstack/react-query'
import { isCallProblem } from '../../lib/problem.ts'
import { retryWhenOutOfReach } from '../../lib/retry.ts'
import { lockTablet } from './session/lock-store.ts'

/** An ended session locks the tablet wherever it is noticed; half-typed input is kept. */
const onError = (thrown: unknown) => {
  if (isCallProblem(thrown, 'SESSION_MISSING') || isCallProblem(thrown, 'SESSION_EXPIRED')) lockTablet()
}

/** The bay keeps its last good answers: behind a lifted truck, yesterday's plan beats an empty screen. */
export const bayQueryClient = new QueryClient({
  queryCache: new QueryCache({ onError }),
  mutationCache: new MutationCache({ onError }),
  defaultOptions: {
    queries: {
      staleTime: 5_000,
      gcTime: Number.POSITIVE_INFINITY,
      retry: retryWhenOutOfReach,
      networkMode: 'always',
    },
    mutations: { networkMode: 'always' },
  },
})
