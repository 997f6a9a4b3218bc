import { listPasskeys, type Passkey, removePasskey } from '@bayledger/contract/passkeys'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { type Clock, clockTimeOrDay } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { useShopClock } from '../shop-clock.ts'

/** A person's passkeys: added by whose they are, removed by them or an owner. */
export function PasskeysPart({ staffId, isOwn }: { staffId: string; isOwn: boolean }) {
  const client = useQueryClient()
  const clock = useShopClock()
  const [name, setName] = useState('')
  const queryKey = ['passkeys', staffId]
  const params = { id: staffId }
  const listed = useQuery({ queryKey, queryFn: ({ signal }) => call(listPasskeys, { params, signal }) })
  const readAgain = () => client.invalidateQueries({ queryKey })
  const adding = useMutation({
    mutationFn: async () => {
      const { makePasskey } = await import('../passkeys.ts')
      await makePasskey(name)
    },
    onSuccess: () => {
      setName('')
      return readAgain()
    },
  })
  const removing = useMutation({
    mutationFn: (passkeyId: string) => call(removePasskey, { params: { id: staffId, passkeyId } }),
    onSettled: readAgain,
  })
  const problem = listed.error ?? removing.error ?? adding.error
  return (
    <Section title="Passkeys">
      <p>
        {isOwn
          ? 'With a passkey you sign in by finger, face or PIN of your own device, or by a security key, without a password and a code. It works under the address under which it is made.'
          : 'They add passkeys under their own name. Remove one whose device is lost.'}
      </p>
      {listed.data === undefined ? (
        <StatusLine>{listed.isError ? null : 'Reading the passkeys.'}</StatusLine>
      ) : listed.data.passkeys.length === 0 ? (
        <p>None.</p>
      ) : (
        <ul className="session-list">
          {listed.data.passkeys.map((passkey) => (
            <li key={passkey.passkeyId} className="stack">
              <span>{lineOf(passkey, clock)}</span>
              <span>
                <Button
                  busy={removing.isPending}
                  onClick={() => removing.mutate(passkey.passkeyId)}
                  aria-label={`Remove it: ${passkey.name}`}
                >
                  Remove it
                </Button>
              </span>
            </li>
          ))}
        </ul>
      )}
      {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
      {isOwn ? (
        <form
          className="record-form"
          aria-label="Add a passkey"
          onSubmit={(event) => {
            event.preventDefault()
            adding.mutate()
          }}
        >
          <TextField
            label="What you call it, such as the device that holds it"
            autoComplete="off"
            maxLength={60}
            value={name}
            onChange={setName}
          />
          <Button
            type="submit"
            busy={adding.isPending}
            whyNot={name.trim() === '' ? 'Type a name for it.' : undefined}
          >
            Add a passkey
          </Button>
        </form>
      ) : null}
    </Section>
  )
}

const lineOf = ({ name, rpId, addedAt, lastUsedAt }: Passkey, clock: Clock): string => {
  const now = new Date().toISOString()
  return [
    name,
    `at ${rpId}`,
    `added ${clockTimeOrDay(addedAt, now, clock)}`,
    lastUsedAt === null ? 'not used yet' : `used ${clockTimeOrDay(lastUsedAt, now, clock)}`,
  ].join(' · ')
}
