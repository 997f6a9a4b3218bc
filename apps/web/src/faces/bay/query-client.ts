import { MutationCache, QueryCache, QueryClient } from '@tanstack/react-query'
import { isCallProblem } from '../../lib/problem.ts'
import { retryWhenOutOfReach } from '../../lib/retry.ts'
import { sessionLost } from './session/local-session.ts'

/** An ended session is noticed wherever the server is asked. */
const onError = (thrown: unknown) => {
  if (isCallProblem(thrown, 'SESSION_MISSING') || isCallProblem(thrown, 'SESSION_EXPIRED')) sessionLost()
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
