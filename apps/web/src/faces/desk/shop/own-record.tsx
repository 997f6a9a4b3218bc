import { getOwnRecord } from '@bayledger/contract/people'
import { useQuery } from '@tanstack/react-query'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { OwnerCodePart } from './owner-code-part.tsx'
import { PasskeysPart } from './passkeys-part.tsx'
import { SecondStepPart } from './second-step-part.tsx'
import { SessionsPart } from './sessions-part.tsx'
import { SetSecret } from './set-secret.tsx'

/** Where everybody changes their own PIN and password. */
export function OwnRecordRoute() {
  const own = useQuery({ queryKey: ['own-record'], queryFn: ({ signal }) => call(getOwnRecord, { signal }) })
  if (own.isError)
    return <ProblemNotice problem={problemText(own.error)} onRetry={() => void own.refetch()} />
  if (own.data === undefined) return <StatusLine>Reading who you are.</StatusLine>
  const { name, signInName, roles } = own.data.content
  return (
    <div className="stack">
      <title>Your PIN and password · Bayledger desk</title>
      <h1>{name}</h1>
      <p>
        You sign in as <span className="exact">{signInName}</span>. Your roles: {roles.join(', ')}. An owner
        changes those.
      </p>
      <Section title="Your PIN and password">
        {(['pin', 'password'] as const).map((secret) => (
          <SetSecret key={secret} person={own.data} secret={secret} isOwn onSet={() => own.refetch()} />
        ))}
      </Section>
      {roles.includes('owner') ? <OwnerCodePart signInName={signInName} /> : null}
      <SecondStepPart staffId={own.data.id} isOwn />
      <PasskeysPart staffId={own.data.id} isOwn />
      <SessionsPart staffId={own.data.id} isOwn />
    </div>
  )
}
