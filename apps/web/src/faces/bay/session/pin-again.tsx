import { signInAtBay } from '@bayledger/contract/sessions'
import { useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { sessionQuery } from '../../../features/people/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { notePin } from './lock-store.ts'
import { PinPad } from './pin-pad.tsx'
import { useSignedIn } from './signed-in.ts'
import './pin-sign-in.css'

type PinAgainProps = {
  title: string
  onBack: () => void
  /** The PIN was right. */
  onProven: () => void
}

/** Whoever is signed in types their PIN once more: a check is sealed by the person who made it, not by a tablet left open. */
export function PinAgain({ title, onBack, onProven }: PinAgainProps) {
  const person = useSignedIn()
  const client = useQueryClient()
  const [pin, setPin] = useState('')
  const [busy, setBusy] = useState(false)
  const [problem, setProblem] = useState<unknown>(null)
  const type = async (typed: string) => {
    if (busy || person === null) return
    setPin(typed)
    if (typed.length < 6) return
    setBusy(true)
    setProblem(null)
    try {
      const session = await call(signInAtBay, { body: { staffId: person.staffId, pin: typed } })
      client.setQueryData(sessionQuery.queryKey, session)
      notePin()
      onProven()
    } catch (thrown) {
      setProblem(thrown)
    } finally {
      setPin('')
      setBusy(false)
    }
  }
  return (
    <StepScreen
      title={title}
      problem={problem}
      beside={<Button onClick={onBack}>Back</Button>}
      how={busy ? 'Checking the PIN …' : `${person?.name ?? ''}: type your 6-digit PIN to seal the check.`}
      pad={<PinPad pin={pin} onPin={(typed) => void type(typed)} />}
    />
  )
}
