import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { askedWords, isToBeAsked } from '../customer/asked-words.ts'
import { ChoiceFields, choicesQuery } from '../customer/choice-fields.tsx'
import { useShopClock } from '../shop-clock.ts'

/** What a known customer agrees to, from when that is, and one press to ask again. */
export function KnownChoices({ customerId }: { customerId: string }) {
  const clock = useShopClock()
  const [isOpen, setOpen] = useState(false)
  const choices = useQuery(choicesQuery(customerId))
  if (choices.data === undefined) return null
  const known = choices.data.choices
  const now = new Date()
  return (
    <>
      <div className="row">
        <p>
          {isToBeAsked(known, now.getTime()) ? <strong>Ask the customer. </strong> : null}
          {askedWords(known, now.toISOString(), clock).join(' ')}
        </p>
        <Button aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          What they agree to
        </Button>
      </div>
      {isOpen ? <ChoiceFields customerId={customerId} /> : null}
    </>
  )
}
