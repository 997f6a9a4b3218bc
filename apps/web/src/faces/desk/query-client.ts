import { QueryClient } from '@tanstack/react-query'

/** The desk asks again whenever it is looked at; between, live events say what changed. */
export const deskQueryClient = new QueryClient({
  defaultOptions: { queries: { staleTime: 2_000, retry: 1, refetchOnWindowFocus: true } },
})
