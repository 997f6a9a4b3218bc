import type { StaffMember } from '@bayledger/contract/identity'
import { useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { PinPad } from '../session/pin-pad.tsx'
import '../session/pin-sign-in.css'

type SecondPersonPinProps = {
  title: string
  /** Those who may. */
  people: readonly StaffMember[]
  /** Who it most likely is; the others are one tap away. */
  likely?: StaffMember | null
  /** What the screen says before a name is tapped, and after the name. */
  asks?: { readonly name: string; readonly pin: string }
  onBack: () => void
  /** Six digits were typed; gives back whether the ledger took it. */
  onPin: (staffId: string, pin: string) => Promise<boolean>
  busy: boolean
  problem: unknown
}

const toAgree = {
  name: 'This takes a second person. Tap your name.',
  pin: 'type your 6-digit PIN to agree.',
}

/** A person taps their name and types their own PIN; whoever is signed in stays signed in. */
export function SecondPersonPin({
  title,
  people,
  likely = null,
  asks = toAgree,
  onBack,
  onPin,
  busy,
  problem,
}: SecondPersonPinProps) {
  const [person, setPerson] = useState<StaffMember | null>(likely)
  const [pin, setPin] = useState('')
  const type = async (typed: string) => {
    if (busy || person === null) return
    setPin(typed)
    if (typed.length < 6) return
    await onPin(person.staffId, typed)
    setPin('')
  }
  const change = (to: StaffMember | null) => {
    setPerson(to)
    setPin('')
  }
  return (
    <StepScreen
      title={title}
      problem={problem}
      beside={
        <>
          {person === null || people.length < 2 ? null : (
            <Button onClick={() => change(null)}>Somebody else</Button>
          )}
          <Button onClick={onBack}>Back</Button>
        </>
      }
      how={person === null ? asks.name : busy ? 'Checking the PIN …' : `${person.name}: ${asks.pin}`}
      pad={
        person === null ? (
          <ul className="pin-names">
            {people.map((one) => (
              <li key={one.staffId}>
                <Button className="pin-name" onClick={() => change(one)}>
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
