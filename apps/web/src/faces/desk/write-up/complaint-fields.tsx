import { readingOrder } from '@bayledger/reckoning/wheels'
import { capitalized } from '@bayledger/wording/capitalized'
import { lights } from '@bayledger/wording/en/lights'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { ReactNode } from 'react'
import { CheckGroup, ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Section } from '../../../ui/section.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import { TextArea } from '../../../ui/text-field.tsx'
import { askedEvents } from './events.ts'
import type { WriteUp } from './write-up-form.ts'

const behaviors = (
  ['flash-then-solid', 'solid', 'intermittent-cold', 'intermittent-other', 'flash-continuous', 'off'] as const
).map((value) => ({ value, label: capitalized(lights.does[value]) }))
const reportedLights = [...behaviors, { value: 'not-known', label: 'Does not know' } as const]

/** What the complaint needs of the write-up, so that a withdrawn one is written again with the same fields. */
export type ComplaintForm = Pick<WriteUp, 'words' | 'light' | 'events' | 'eventWheels' | 'askedEach'>

type ComplaintProps = {
  readonly form: ComplaintForm
  readonly set: (change: Partial<ComplaintForm>) => void
  /** What closes the section. */
  readonly children?: ReactNode
}

/** The complaint in the customer's words, what the light does, and what happened lately. */
export function ComplaintFields({ form, set, children }: ComplaintProps) {
  return (
    <Section title="Complaint">
      <div className="stack">
        <TextArea
          label="The complaint, in the customer’s own words"
          value={form.words}
          onChange={(words) => set({ words })}
        />
        <ChoiceGroup
          label="What does the warning light do?"
          options={reportedLights}
          value={form.light}
          onChange={(light) => set({ light })}
        />
        <CheckGroup
          label="What happened lately?"
          hint="Ask each by name. A can of sealant can burn when the tire is opened."
          options={askedEvents.map(({ kind, label }) => ({ value: kind, label }))}
          values={form.events}
          onChange={(events) => set({ events })}
        />
        <EventWheels form={form} set={set} />
        <CheckGroup
          label="Asked"
          options={[{ value: 'each', label: 'I asked for each of these by name; the others did not happen' }]}
          values={form.askedEach ? ['each'] : []}
          onChange={(values) => set({ askedEach: values.length > 0 })}
        />
        {children}
      </div>
    </Section>
  )
}

function EventWheels({ form, set }: ComplaintProps) {
  return (
    <div className="fields">
      {askedEvents
        .filter(({ kind, atWheel }) => atWheel && form.events.includes(kind))
        .map(({ kind, label }) => (
          <SelectField
            key={kind}
            label={`${label}: which wheel?`}
            unchosen="Not known"
            options={readingOrder.map((wheel) => ({
              value: wheel,
              label: `${wheel}, ${wheelNames[wheel]}`,
            }))}
            value={form.eventWheels[kind] ?? null}
            onChange={(wheel) => set({ eventWheels: { ...form.eventWheels, [kind]: wheel } })}
          />
        ))}
    </div>
  )
}
