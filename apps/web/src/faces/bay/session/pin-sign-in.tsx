import type { StaffMember } from '@bayledger/contract/identity'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { sessionQuery, staffQuery } from '../../../features/people/queries.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { bayOutbox } from '../record/bay-outbox.ts'
import { deviceQuery } from './device-query.ts'
import { KeepsNothing } from './keeps-nothing.tsx'
import { knownHereQuery } from './known-here.ts'
import { localSession } from './local-session.ts'
import { openDoor } from './lock-store.ts'
import { PinPad } from './pin-pad.tsx'
import { registerKey, signInHere } from './sign-in-here.ts'
import { leaveSessionToSignIn } from './use-idle-lock.ts'
import './pin-sign-in.css'

type PinSignInProps = {
  title: string
  /** The most likely person; others are one tap away. */
  likely: StaffMember | null
  /** Leaves without changing the person, where there is one. */
  onLeave?: (() => void) | undefined
}

/** Tap your name, type your six digits. Nothing on the screen behind is lost by it. */
export function PinSignIn({ title, likely, onLeave }: PinSignInProps) {
  const staff = useQuery(staffQuery)
  const known = useQuery(knownHereQuery)
  const people = staff.data?.staff ?? (known.data?.length ? known.data : undefined)
  const client = useQueryClient()
  const [person, setPerson] = useState<StaffMember | null>(likely)
  const [pin, setPin] = useState('')
  const [problem, setProblem] = useState<unknown>(null)
  const [busy, setBusy] = useState(false)

  const enter = async (staffId: string, typed: string) => {
    setBusy(true)
    setProblem(null)
    try {
      leaveSessionToSignIn()
      // Cancel pending requests: they belong to the person who leaves and would be refused.
      await client.cancelQueries({ queryKey: ['orders'] })
      await client.cancelQueries({ queryKey: sessionQuery.queryKey })
      const session = await signInHere(staffId, typed)
      client.setQueryData(sessionQuery.queryKey, session)
      openDoor()
      bayOutbox.wake()
      if (localSession() === null) void registerOwnKey()
      void client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== 'session' })
    } catch (thrown) {
      setProblem(thrown)
      // A tablet that was put out is led to its enrollment by the door.
      if (isCallProblem(thrown, 'DEVICE_UNKNOWN'))
        void client.invalidateQueries({ queryKey: deviceQuery.queryKey })
    } finally {
      setPin('')
      setBusy(false)
    }
  }
  /** Where this fails the next sign-in does it. */
  const registerOwnKey = async () => {
    const held = client.getQueryData(deviceQuery.queryKey)
    const device = held && (await registerKey(held).catch(() => null))
    if (device) client.setQueryData(deviceQuery.queryKey, device)
  }
  const type = (typed: string) => {
    if (busy || person === null) return
    setPin(typed)
    if (typed.length === 6) void enter(person.staffId, typed)
  }

  return (
    <main className="pin-sign-in" aria-label={title}>
      <div className="pin-head">
        <h1>{person === null ? title : person.name}</h1>
        {person === null ? null : (
          <Button
            onClick={() => {
              setPerson(null)
              setPin('')
              setProblem(null)
            }}
          >
            Somebody else
          </Button>
        )}
        {onLeave === undefined ? null : <Button onClick={onLeave}>Back to the work</Button>}
      </div>
      <StatusLine>{busy ? 'Checking the PIN …' : person === null ? '' : 'Type your 6-digit PIN.'}</StatusLine>
      {problem === null ? null : <ProblemNotice key={String(problem)} problem={withoutRequest(problem)} />}
      <KeepsNothing />
      {staff.isError && people === undefined ? (
        <ProblemNotice problem={problemText(staff.error)} onRetry={() => void staff.refetch()} />
      ) : null}
      {person === null ? (
        <ul className="pin-names">
          {(people ?? []).map((member) => (
            <li key={member.staffId}>
              <Button className="pin-name" onClick={() => setPerson(member)}>
                {member.name}
              </Button>
            </li>
          ))}
        </ul>
      ) : (
        <PinPad pin={pin} onPin={type} />
      )}
    </main>
  )
}

/** A mistyped PIN needs no request id. */
const withoutRequest = (problem: unknown) => {
  const { title, detail } = problemText(problem)
  return { title, detail }
}
