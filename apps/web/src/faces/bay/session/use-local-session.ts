import { useQuery, useQueryClient } from '@tanstack/react-query'
import { useEffect } from 'react'
import { sessionQuery } from '../../../features/people/queries.ts'
import { isOutOfReach } from '../../../lib/out-of-reach.ts'
import { deviceQuery } from './device-query.ts'
import { endLocalSession, goOnWith, localSession } from './local-session.ts'
import { lockTablet } from './lock-store.ts'

/** Asked twice, the server would end the session that it has just given, and refuse what is on its way under it. */
let isAsked = false

/**
 * Goes on with the server as soon as it answers, where the tablet itself let the person in. Whoever left meanwhile, or has
 * another PIN, is asked for it.
 */
export const useLocalSession = (): void => {
  const client = useQueryClient()
  const { data: device, refetch } = useQuery({ ...deviceQuery, enabled: false })
  useEffect(() => {
    // Any call that the server answers says that it is back; the tablet then asks for its time first.
    goOnWith(() => void refetch())
    const hear = () => {
      if (localSession() !== null) void refetch()
    }
    window.addEventListener('online', hear)
    return () => {
      goOnWith(() => undefined)
      window.removeEventListener('online', hear)
    }
  }, [refetch])
  useEffect(() => {
    const local = localSession()
    if (device === undefined || local === null || isAsked) return
    isAsked = true
    const asked = import('./go-on-with-server.ts').then(({ goOnWithServer }) => goOnWithServer(device))
    const answered = asked.then(
      (session) => {
        if (session === null) return
        client.setQueryData(sessionQuery.queryKey, session)
        void client.invalidateQueries({
          predicate: ({ queryKey }) => !['session', 'device'].includes(String(queryKey[0])),
        })
      },
      (thrown: unknown) => {
        if (isOutOfReach(thrown) || localSession() !== local) return
        endLocalSession()
        lockTablet()
      },
    )
    void answered.finally(() => {
      isAsked = false
    })
  }, [device, client])
}
