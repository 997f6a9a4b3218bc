import { type Person, setPassword, setPin } from '@bayledger/contract/people'
import { pinDigits } from '@bayledger/ledger/proof-of-person'
import { useMutation, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { whyUnsuitablePassword, whyUnsuitablePin } from '../why-unsuitable.ts'
import { personFaults } from './person-words.ts'

type Secret = 'pin' | 'password'

const names: Readonly<Record<Secret, string>> = { pin: 'PIN', password: 'password' }

type SetSecretProps = {
  person: Person
  secret: Secret
  /** Whose it is proves it with the present one. */
  isOwn: boolean
  onSet: (person: Person) => unknown
}

/** Sets the PIN or the password of a person: typed twice, and by its owner with the present one. */
export function SetSecret({ person, secret, isOwn, onSet }: SetSecretProps) {
  const [present, setPresent] = useState('')
  const [typed, setTyped] = useState('')
  const [again, setAgain] = useState('')
  const client = useQueryClient()
  const has = secret === 'pin' ? person.facts.hasPin : person.facts.hasPassword
  const proof: Secret = has ? secret : secret === 'pin' ? 'password' : 'pin'
  const empty = () => [setPresent, setTyped, setAgain].forEach((set) => void set(''))
  const setting = useMutation({
    mutationFn: () => {
      const given = { params: { id: person.id }, version: person.version }
      const proven = isOwn ? present : null
      return secret === 'pin'
        ? call(setPin, { ...given, body: { pin: typed, present: proven } })
        : call(setPassword, { ...given, body: { password: typed, present: proven } })
    },
    onSuccess: async (saved) => {
      empty()
      await onSet(saved)
    },
    // Somebody may have saved this person meanwhile: what is shown is read again, what was typed stays.
    onError: (thrown) => {
      if (isCallProblem(thrown, 'VERSION_STALE')) void client.invalidateQueries()
    },
  })
  const missing =
    isOwn && present === ''
      ? personFaults.noProof
      : typed === '' && again === ''
        ? personFaults.untyped
        : (secret === 'pin' ? whyUnsuitablePin : whyUnsuitablePassword)(typed, again)
  const field = secret === 'pin' ? pinField : passwordField
  return (
    <form
      className="record-form"
      aria-label={`Set the ${names[secret]} of ${person.content.name}`}
      onSubmit={(event) => {
        event.preventDefault()
        setting.mutate()
      }}
    >
      {isOwn ? (
        <TextField
          label={`Your present ${names[proof]}`}
          {...(proof === 'pin' ? pinField : { type: 'password', autoComplete: 'current-password' })}
          value={present}
          onChange={setPresent}
        />
      ) : null}
      <TextField label={`New ${names[secret]}`} {...field} value={typed} onChange={setTyped} />
      <TextField label={`New ${names[secret]} again`} {...field} value={again} onChange={setAgain} />
      {setting.isError ? <ProblemNotice problem={problemText(setting.error)} /> : null}
      <Button type="submit" busy={setting.isPending} whyNot={missing}>
        Set the {names[secret]}
      </Button>
      <StatusLine>
        {setting.isSuccess && typed === '' ? `The ${names[secret]} is set. Other sessions have ended.` : null}
      </StatusLine>
    </form>
  )
}

const pinField = {
  type: 'password',
  inputMode: 'numeric',
  autoComplete: 'off',
  maxLength: pinDigits,
} as const
const passwordField = { type: 'password', autoComplete: 'new-password' } as const
