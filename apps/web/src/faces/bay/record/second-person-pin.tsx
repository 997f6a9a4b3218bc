import type { AgreedKind } from '@bayledger/ledger/second-person'
import { useState } from 'react'
import { useSecondPeople } from '../../../features/people/second-person-fields.tsx'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { PinPad } from '../session/pin-pad.tsx'
import '../session/pin-sign-in.css'

type SecondPersonPinProps = {
  kind: AgreedKind
  title: string
  onBack: () => void
  /** Six digits were typed; gives back whether the ledger took it. */
  onPin: (staffId: string, pin: string) => Promise<boolean>
  busy: boolean
  problem: unknown
}

/** The second person taps their name and types their own PIN; whoever is signed in stays signed in. */
export function SecondPersonPin({ kind, title, onBack, onPin, busy, problem }: SecondPersonPinProps) {
  const people = useSecondPeople(kind)
  const [staffId, setStaffId] = useState<string | null>(null)
  const [pin, setPin] = useState('')
  const person = people.find((one) => one.staffId === staffId)
  const type = async (typed: string) => {
    if (busy || person === undefined) return
    setPin(typed)
    if (typed.length < 6) return
    await onPin(person.staffId, typed)
    setPin('')
  }
  return (
    <StepScreen
      title={title}
      problem={problem}
      beside={<Button onClick={onBack}>Back</Button>}
      how={
        person === undefined
          ? 'This takes a second person. Tap your name.'
          : busy
            ? 'Checking the PIN …'
            : `${person.name}: type your 6-digit PIN to agree.`
      }
      pad={
        person === undefined ? (
          <ul className="pin-names">
            {people.map((one) => (
              <li key={one.staffId}>
                <Button className="pin-name" onClick={() => setStaffId(one.staffId)}>
                  {one.name}
                </Button>
              </li>
            ))}
          </ul>
        ) : (
          <PinPad pin={pin} onPin={(typed) => void type(typed)} />
        )
      }
    />
  )
}
