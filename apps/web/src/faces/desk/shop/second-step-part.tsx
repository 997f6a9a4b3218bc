import {
  beginSecondStep,
  confirmSecondStep,
  endSecondStep,
  getSecondStep,
} from '@bayledger/contract/second-step'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { QrCode } from '../sheet/qr-code.tsx'
import '../print/print-sheet.css'

/** The code of an authenticator app at each sign-in: turned on by whose it is, off by them or an owner. */
export function SecondStepPart({ staffId, isOwn }: { staffId: string; isOwn: boolean }) {
  const client = useQueryClient()
  const params = { id: staffId }
  const queryKey = ['second-step', staffId]
  const found = useQuery({ queryKey, queryFn: ({ signal }) => call(getSecondStep, { params, signal }) })
  const readAgain = () => client.invalidateQueries({ queryKey })
  const beginning = useMutation({ mutationFn: () => call(beginSecondStep, {}) })
  const ending = useMutation({ mutationFn: () => call(endSecondStep, { params }), onSettled: readAgain })
  const [codes, setCodes] = useState<readonly string[] | null>(null)
  const begun = beginning.data
  const problem = found.error ?? beginning.error ?? ending.error
  return (
    <Section title="Code at sign-in">
      {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
      {codes !== null ? <RecoveryCodes codes={codes} onKept={() => setCodes(null)} /> : null}
      {found.data === undefined ? (
        <StatusLine>{found.isError ? null : 'Reading whether it is on.'}</StatusLine>
      ) : found.data.isOn ? (
        <>
          <p>
            On: at the desk a code of an authenticator app is typed after the password. Recovery codes left:{' '}
            {found.data.recoveryCodesLeft}.
          </p>
          <div className="row">
            <Button busy={ending.isPending} onClick={() => ending.mutate()}>
              Turn it off
            </Button>
          </div>
        </>
      ) : !isOwn ? (
        <p>Off. They turn it on under their own name.</p>
      ) : begun === undefined ? (
        <>
          <p>Off. With it, whoever learns your password still cannot sign in without your telephone.</p>
          <div className="row">
            <Button busy={beginning.isPending} onClick={() => beginning.mutate()}>
              Turn it on
            </Button>
          </div>
        </>
      ) : (
        <Confirm
          {...begun}
          onConfirmed={async (made) => {
            setCodes(made)
            beginning.reset()
            await readAgain()
          }}
        />
      )}
    </Section>
  )
}

type ConfirmProps = { secret: string; address: string; onConfirmed: (codes: readonly string[]) => unknown }

function Confirm({ secret, address, onConfirmed }: ConfirmProps) {
  const [code, setCode] = useState('')
  const confirming = useMutation({
    mutationFn: () => call(confirmSecondStep, { body: { code } }),
    onSuccess: ({ recoveryCodes }) => onConfirmed(recoveryCodes),
    onError: () => setCode(''),
  })
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault()
        confirming.mutate()
      }}
    >
      <p>Scan this with an authenticator app on your telephone, or type the key below into it.</p>
      <QrCode text={address} label="The key for your authenticator app" />
      <p className="exact">{secret.replace(/(.{4})(?=.)/g, '$1 ')}</p>
      <TextField
        label="Code that the app shows"
        inputMode="numeric"
        autoComplete="one-time-code"
        value={code}
        onChange={setCode}
      />
      {confirming.isError ? <ProblemNotice problem={problemText(confirming.error)} /> : null}
      <Button type="submit" busy={confirming.isPending} whyNot={code === '' ? 'Type the code.' : undefined}>
        Turn it on
      </Button>
    </form>
  )
}

function RecoveryCodes({ codes, onKept }: { codes: readonly string[]; onKept: () => void }) {
  return (
    <div className="stack" role="status">
      <p>
        Print these recovery codes and keep them away from the telephone. Each is good once in place of a code
        of the app. They are not shown again.
      </p>
      <div className="print-sheet">
        <p className="print-words">
          Recovery codes for the sign-in at {location.origin}/desk, each good once
        </p>
        <ul className="exact">
          {codes.map((code) => (
            <li key={code}>{code}</li>
          ))}
        </ul>
      </div>
      <div className="row">
        <Button onClick={() => window.print()}>Print them</Button>
        <Button onClick={onKept}>I have them on paper</Button>
      </div>
    </div>
  )
}
