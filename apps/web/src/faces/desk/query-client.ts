import { MutationCache, QueryCache, QueryClient } from '@tanstack/react-query'
import { isCallProblem } from '../../lib/problem.ts'
import { retryWhenOutOfReach } from '../../lib/retry.ts'

/**
 * The desk refetches whenever it gains focus; in between, live events say what changed. A missing session
 * any more is handled here, once for all of the face.
 */
export function createDeskQueryClient(onSignedOut: () => void): QueryClient {
  const onError = (thrown: unknown) => {
    if (isCallProblem(thrown, 'SESSION_MISSING') || isCallProblem(thrown, 'SESSION_EXPIRED')) onSignedOut()
  }
  return new QueryClient({
    queryCache: new QueryCache({ onError }),
    mutationCache: new MutationCache({ onError }),
    defaultOptions: { queries: { staleTime: 2_000, retry: retryWhenOutOfReach, refetchOnWindowFocus: true } },
  })
}
