import { getOwnRecord, setPassword } from '@bayledger/contract/people'
import { useMutation } from '@tanstack/react-query'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { whyUnsuitablePassword } from '../why-unsuitable.ts'
import { NewPasswordFields } from './new-password-fields.tsx'

/** Whoever signed in with a password that was given to them chooses their own. `given`: that password. */
export function ChoosePassword({ given, onDone }: { given: string; onDone: () => unknown }) {
  const [password, setTyped] = useState('')
  const [again, setAgain] = useState('')
  const choosing = useMutation({
    mutationFn: async () => {
      const { id, version } = await call(getOwnRecord, {})
      return call(setPassword, { params: { id }, version, body: { password, present: given } })
    },
    onSuccess: onDone,
  })
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault()
        choosing.mutate()
      }}
    >
      <p>
        This password was given to you. Choose your own, which nobody else knows: at least 12 characters. A
        few words with spaces are easy to type.
      </p>
      <NewPasswordFields
        autoFocus
        password={password}
        again={again}
        onPassword={setTyped}
        onAgain={setAgain}
      />
      {choosing.isError ? <ProblemNotice problem={problemText(choosing.error)} /> : null}
      <Button
        type="submit"
        look="wide"
        busy={choosing.isPending}
        whyNot={whyUnsuitablePassword(password, again)}
      >
        Set the password and go on
      </Button>
    </form>
  )
}
