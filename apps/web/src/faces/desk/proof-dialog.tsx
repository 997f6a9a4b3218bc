import { listPasskeys } from '@bayledger/contract/passkeys'
import { proveAgain } from '@bayledger/contract/sessions'
import { useMutation, useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { sessionQuery } from '../../features/people/queries.ts'
import { call } from '../../lib/api-client.ts'
import { problemText } from '../../lib/problem.ts'
import { Button } from '../../ui/button.tsx'
import { Dialog } from '../../ui/dialog.tsx'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { TextField } from '../../ui/text-field.tsx'

/** Whoever sits here proves again that it is them, by password or passkey; what they were doing then goes on by itself. */
export function ProofDialog({ onAnswer }: { onAnswer: (isProven: boolean) => void }) {
  const [password, setPassword] = useState('')
  const proving = useMutation({
    mutationFn: () => call(proveAgain, { body: { password } }),
    onSuccess: () => onAnswer(true),
    onError: () => setPassword(''),
  })
  const session = useQuery(sessionQuery)
  const id = session.data?.staff.staffId ?? ''
  const passkeys = useQuery({
    queryKey: ['passkeys', id],
    queryFn: ({ signal }) => call(listPasskeys, { params: { id }, signal }),
    enabled: id !== '',
  })
  const hasPasskey = passkeys.data?.passkeys.some(({ rpId }) => rpId === location.hostname) === true
  const signing = useMutation({
    mutationFn: async () => {
      const { proveWithPasskey } = await import('./passkeys.ts')
      await proveWithPasskey()
    },
    onSuccess: () => onAnswer(true),
  })
  const problem = proving.error ?? signing.error
  return (
    <Dialog title="Prove again that it is you" onClose={() => onAnswer(false)} closeWord="Not now">
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault()
          proving.mutate()
        }}
      >
        <p>
          You signed in more than ten minutes ago, and this changes people, tablets, prices or texts. What you
          typed is kept and is sent once you have typed your password{hasPasskey ? ' or used a passkey' : ''}.
        </p>
        <TextField
          label="Your password"
          type="password"
          autoComplete="current-password"
          value={password}
          onChange={setPassword}
        />
        {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
        <Button
          type="submit"
          look="wide"
          busy={proving.isPending}
          whyNot={password === '' ? 'Type your password.' : undefined}
        >
          Go on
        </Button>
        {hasPasskey ? (
          <Button busy={signing.isPending} onClick={() => signing.mutate()}>
            Use a passkey instead
          </Button>
        ) : null}
      </form>
    </Dialog>
  )
}
