import { enrollDevice } from '@bayledger/contract/devices'
import { useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { useNavigate } from 'react-router'
import { tabletKey } from '../../../ledger/tablet-key.ts'
import { call } from '../../../lib/api-client.ts'
import { patterns } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { HandsIn } from '../session/hands-in.tsx'
import { KeepsNothing } from '../session/keeps-nothing.tsx'
import { contactMade } from '../session/tablet-contact.ts'

/** Enrolls this tablet with a code that the desk makes; each code works once. */
export function EnrollRoute() {
  const [code, setCode] = useState('')
  const [name, setName] = useState('')
  const [problem, setProblem] = useState<unknown>(null)
  const [busy, setBusy] = useState(false)
  const client = useQueryClient()
  const navigate = useNavigate()
  const enroll = async () => {
    setBusy(true)
    setProblem(null)
    try {
      const publicKey = await tabletKey.prepare()
      const body = { code: code.trim(), name: name.trim(), ...(publicKey === null ? {} : { publicKey }) }
      const device = await call(enrollDevice, { body })
      client.clear()
      await import('../session/hand-in-picture.ts')
        .then(({ giveUpPictures }) => giveUpPictures())
        .catch(() => undefined)
      await contactMade(device)
      navigate(patterns.bay, { replace: true })
    } catch (thrown) {
      setProblem(thrown)
    } finally {
      setBusy(false)
    }
  }
  return (
    <main className="bay-step bay-door">
      <title>Enroll this tablet · Bayledger bay</title>
      <h1>Enroll this tablet</h1>
      <HandsIn />
      <KeepsNothing />
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault()
          void enroll()
        }}
      >
        <TextField
          label="Code from the desk"
          hint="At the desk, open Add a tablet. The code works once, within ten minutes."
          exact
          autoFocus
          value={code}
          onChange={setCode}
        />
        <TextField label="Name of this tablet" hint="Such as Bay 3." value={name} onChange={setName} />
        {problem === null ? null : <ProblemNotice key={String(problem)} problem={problemText(problem)} />}
        <Button
          type="submit"
          look="wide"
          busy={busy}
          whyNot={code.trim() === '' || name.trim() === '' ? 'Type the code and a name.' : undefined}
        >
          Enroll
        </Button>
      </form>
    </main>
  )
}
