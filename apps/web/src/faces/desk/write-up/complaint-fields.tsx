import { readingOrder } from '@bayledger/reckoning/wheels'
import { capitalized } from '@bayledger/wording/capitalized'
import { lights } from '@bayledger/wording/en/lights'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { ReactNode } from 'react'
import { CheckGroup, ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Section } from '../../../ui/section.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import { TextArea } from '../../../ui/text-field.tsx'
import { askedEvents, type EventAnswer, type EventKind, whenHappened } from './events.ts'
import './write-up.css'
import type { WriteUp } from './write-up-form.ts'

const behaviors = (
  ['flash-then-solid', 'solid', 'intermittent-cold', 'intermittent-other', 'flash-continuous', 'off'] as const
).map((value) => ({ value, label: capitalized(lights.does[value]) }))
const reportedLights = [...behaviors, { value: 'not-known', label: 'Does not know' } as const]

/** What the complaint needs of the write-up, so that a withdrawn one is written again with the same fields. */
export type ComplaintForm = Pick<WriteUp, 'words' | 'light' | 'events' | 'askedEach'>

type ComplaintProps = {
  readonly form: ComplaintForm
  readonly set: (change: Partial<ComplaintForm>) => void
  /** What closes the section. */
  readonly children?: ReactNode
}

/** The complaint in the customer's words, what the light does, and what happened lately. */
export function ComplaintFields({ form, set, children }: ComplaintProps) {
  return (
    <Section title="Complaint" id="complaint">
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
        <EventRows form={form} set={set} />
        <CheckGroup
          label="Asked"
          options={[
            {
              value: 'each',
              label: 'I asked for each of these by name; those without an answer did not happen',
            },
          ]}
          values={form.askedEach ? ['each'] : []}
          onChange={(values) => set({ askedEach: values.length > 0 })}
        />
        {children}
      </div>
    </Section>
  )
}

const answers = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
  { value: 'not-known', label: 'Does not know' },
] as const

/** Each event by name, with an answer of its own; one that happened also with its day and its wheel. */
function EventRows({ form: { events }, set }: ComplaintProps) {
  const change = (kind: EventKind, answer: Partial<EventAnswer>) =>
    set({
      events: {
        ...events,
        [kind]: { happened: 'yes', wheel: null, daysAgo: null, ...events[kind], ...answer },
      },
    })
  return (
    <fieldset className="field">
      <legend className="field-legend">What happened lately?</legend>
      <p className="quiet">Ask each by name. A can of sealant can burn when the tire is opened.</p>
      <div className="event-rows">
        {askedEvents.map(({ kind, label, atWheel }) => {
          const answer = events[kind]
          return (
            <div key={kind} className="event-row">
              <ChoiceGroup
                label={label}
                options={answers}
                value={answer?.happened ?? null}
                onChange={(happened) => change(kind, { happened })}
              />
              {answer?.happened === 'yes' ? (
                <div className="fields">
                  <SelectField
                    label={`${label}: when?`}
                    unchosen="Not known"
                    options={whenHappened}
                    value={answer.daysAgo === null ? null : String(answer.daysAgo)}
                    onChange={(days) => change(kind, { daysAgo: Number(days) })}
                  />
                  {atWheel ? (
                    <SelectField
                      label={`${label}: which wheel?`}
                      unchosen="Not known"
                      options={wheelOptions}
                      value={answer.wheel}
                      onChange={(wheel) => change(kind, { wheel })}
                    />
                  ) : null}
                </div>
              ) : null}
            </div>
          )
        })}
      </div>
    </fieldset>
  )
}

const wheelOptions = readingOrder.map((wheel) => ({ value: wheel, label: `${wheel}, ${wheelNames[wheel]}` }))
