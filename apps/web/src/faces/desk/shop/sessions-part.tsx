import { endOneSession, endOtherSessions, listSessions, type OpenSession } from '@bayledger/contract/sessions'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import { sessionLine } from './session-words.ts'

/** Where a person is signed in, and how to end it. `isOwn`: whose page it is looks at it. */
export function SessionsPart({ staffId, isOwn }: { staffId: string; isOwn: boolean }) {
  const client = useQueryClient()
  const clock = useShopClock()
  const queryKey = ['sessions', staffId]
  const params = { id: staffId }
  const listed = useQuery({ queryKey, queryFn: ({ signal }) => call(listSessions, { params, signal }) })
  const ending = useMutation({
    mutationFn: async (sessionId: string | null): Promise<unknown> =>
      sessionId === null
        ? call(endOtherSessions, { params })
        : call(endOneSession, { params: { id: staffId, sessionId } }),
    onSettled: () => client.invalidateQueries({ queryKey }),
  })
  const now = new Date().toISOString()
  const sessions = listed.data?.sessions ?? []
  const others = sessions.filter(({ isThisOne }) => !isThisOne)
  return (
    <Section title={isOwn ? 'Where you are signed in' : 'Where they are signed in'}>
      {listed.isError ? (
        <ProblemNotice problem={problemText(listed.error)} onRetry={() => void listed.refetch()} />
      ) : listed.data === undefined ? (
        <StatusLine>Reading the sessions.</StatusLine>
      ) : sessions.length === 0 ? (
        <p>Nowhere.</p>
      ) : (
        <ul className="session-list">
          {sessions.map((session) => (
            <SessionLine
              key={session.sessionId}
              session={session}
              words={sessionLine(session, now, clock)}
              busy={ending.isPending}
              onEnd={() => ending.mutate(session.sessionId)}
            />
          ))}
        </ul>
      )}
      {ending.isError ? <ProblemNotice problem={problemText(ending.error)} /> : null}
      {others.length > 1 ? (
        <Button busy={ending.isPending} onClick={() => ending.mutate(null)}>
          {isOwn ? 'End all others' : 'End all of them'}
        </Button>
      ) : null}
    </Section>
  )
}

type SessionLineProps = { session: OpenSession; words: string; busy: boolean; onEnd: () => void }

function SessionLine({ session, words, busy, onEnd }: SessionLineProps) {
  return (
    <li className="stack">
      <span>{words}</span>
      {session.browser === null ? null : <span className="quiet">{session.browser}</span>}
      {session.isThisOne ? null : (
        <span>
          <Button busy={busy} onClick={onEnd} aria-label={`End it: ${words}`}>
            End it
          </Button>
        </span>
      )}
    </li>
  )
}
