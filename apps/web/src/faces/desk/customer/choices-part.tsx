import { Section } from '../../../ui/section.tsx'
import { ChoiceFields } from './choice-fields.tsx'

/** What the customer agrees to, by purpose and channel. */
export function ChoicesPart({ customerId }: { customerId: string }) {
  return (
    <Section title="What the customer agrees to">
      <ChoiceFields customerId={customerId} />
    </Section>
  )
}
