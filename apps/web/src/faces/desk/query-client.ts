import { MutationCache, QueryCache, QueryClient } from '@tanstack/react-query'
import { isCallProblem } from '../../lib/problem.ts'
import { retryWhenOutOfReach } from '../../lib/retry.ts'

/** Each of them is settled on the sign-in page. */
const signInProblems = ['SESSION_MISSING', 'SESSION_EXPIRED', 'SIGN_IN_UNFINISHED'] as const

/**
 * The desk refetches whenever it gains focus; in between, live events say what changed. A missing session
 * any more, or one that awaits something, is handled here, once for all of the face.
 */
export function createDeskQueryClient(onSignedOut: () => void): QueryClient {
  const onError = (thrown: unknown) => {
    if (signInProblems.some((code) => isCallProblem(thrown, code))) onSignedOut()
  }
  return new QueryClient({
    queryCache: new QueryCache({ onError }),
    mutationCache: new MutationCache({ onError }),
    defaultOptions: { queries: { staleTime: 2_000, retry: retryWhenOutOfReach, refetchOnWindowFocus: true } },
  })
}
