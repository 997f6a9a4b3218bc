import { enterByOwnerCode } from '@bayledger/contract/owner-code'
import { useMutation } from '@tanstack/react-query'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { whyUnsuitablePassword } from '../why-unsuitable.ts'
import { NewPasswordFields } from './new-password-fields.tsx'

type EnterByOwnerCodeProps = {
  shopId: string | null
  /** The sign-in name, as far as it was typed. */
  typed: string
  onSet: (name: string) => void
  onBack: () => void
}

/** For an owner who lost the password: the printed code sets another one. */
export function EnterByOwnerCode({ shopId, typed, onSet, onBack }: EnterByOwnerCodeProps) {
  const [name, setName] = useState(typed)
  const [code, setCode] = useState('')
  const [password, setPassword] = useState('')
  const [again, setAgain] = useState('')
  const setting = useMutation({
    mutationFn: () =>
      call(enterByOwnerCode, {
        body: { ...(shopId === null ? {} : { shopId }), name, code, password },
      }),
    onSuccess: () => onSet(name),
  })
  const missing =
    name.trim() === '' || code.trim() === ''
      ? 'Type your name and the code from the paper.'
      : whyUnsuitablePassword(password, again)
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault()
        setting.mutate()
      }}
    >
      <p>
        With the printed code an owner sets a new password. The code is used up, all sessions end, and a code
        at sign-in and passkeys are removed.
      </p>
      <TextField
        label="Sign-in name"
        autoComplete="username"
        autoFocus={typed === ''}
        value={name}
        onChange={setName}
      />
      <TextField label="Printed code" autoFocus={typed !== ''} exact value={code} onChange={setCode} />
      <NewPasswordFields password={password} again={again} onPassword={setPassword} onAgain={setAgain} />
      {setting.isError ? <ProblemNotice problem={problemText(setting.error)} /> : null}
      <Button type="submit" look="wide" busy={setting.isPending} whyNot={missing}>
        Set the password
      </Button>
      <Button onClick={onBack}>Back to the sign-in</Button>
    </form>
  )
}
