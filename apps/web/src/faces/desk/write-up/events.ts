import type { EventEvidence } from '@bayledger/reckoning/evidence/evidence'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

export type EventKind = EventEvidence['kind']

/** What the customer said of one event. `daysAgo`: about; `null` where they do not know. */
export type EventAnswer = {
  readonly happened: 'yes' | 'no' | 'not-known'
  readonly wheel: WheelPosition | null
  readonly daysAgo: number | null
}

/** By event; what nobody asked for is absent. */
export type EventAnswers = Readonly<Partial<Record<EventKind, EventAnswer>>>

/** The events to ask about at every write-up, in the customer's words; `atWheel`: the wheel matters. */
export const askedEvents: readonly { kind: EventKind; label: string; atWheel: boolean }[] = [
  { kind: 'sealant', label: 'A can of sealant used', atWheel: true },
  { kind: 'driven-low', label: 'Driven low or flat', atWheel: true },
  { kind: 'topped-up-before-arrival', label: 'Air added before coming', atWheel: false },
  { kind: 'rotation', label: 'Tires rotated', atWheel: false },
  { kind: 'tires-changed', label: 'New tires', atWheel: false },
  { kind: 'seasonal-wheels', label: 'Winter or summer set fitted', atWheel: false },
  { kind: 'used-wheel', label: 'A used wheel fitted', atWheel: true },
  { kind: 'aftermarket-wheels', label: 'Other wheels than the original', atWheel: false },
  { kind: 'sensor-replaced-elsewhere', label: 'A sensor replaced elsewhere', atWheel: true },
  { kind: 'battery-disconnected', label: 'Battery disconnected or changed', atWheel: false },
  { kind: 'control-module-work', label: 'Work on a control module', atWheel: false },
  { kind: 'collision', label: 'Collision or pothole', atWheel: true },
  { kind: 'dash-cam-added', label: 'Dash camera added', atWheel: false },
  { kind: 'charger-added', label: 'Phone charger added', atWheel: false },
  { kind: 'window-film-added', label: 'Window film added', atWheel: false },
  { kind: 'one-place-only', label: 'Only in one place', atWheel: false },
]

/** How long ago, as people say it. */
export const whenHappened: readonly { readonly value: string; readonly label: string }[] = [
  { value: '0', label: 'Today' },
  { value: '1', label: 'Yesterday' },
  { value: '3', label: 'A few days ago' },
  { value: '7', label: 'About a week ago' },
  { value: '14', label: 'About two weeks ago' },
  { value: '30', label: 'About a month ago' },
  { value: '90', label: 'About three months ago' },
  { value: '365', label: 'A year ago or longer' },
]

/**
 * The events as evidence. One without an answer counts as "did not happen" only if each was asked by name; else it is absent,
 * which means "not known". So is what the customer does not know: evidence has no third answer.
 */
export const eventsAsEvidence = (answers: EventAnswers, askedEach: boolean): EventEvidence[] =>
  askedEvents.flatMap(({ kind, atWheel }): EventEvidence[] => {
    const answer = answers[kind]
    if (answer === undefined) return askedEach ? [{ kind, happened: false }] : []
    if (answer.happened === 'not-known') return []
    if (answer.happened === 'no') return [{ kind, happened: false }]
    return [
      {
        kind,
        happened: true,
        ...(atWheel && answer.wheel !== null ? { wheel: answer.wheel } : {}),
        ...(answer.daysAgo === null ? {} : { daysAgo: answer.daysAgo }),
      },
    ]
  })

/** "yesterday", "about 3 days ago": how long ago something happened, in whole days as they were told. */
export const agoWords = (daysAgo: number): string =>
  daysAgo === 0 ? 'today' : daysAgo === 1 ? 'yesterday' : `about ${daysAgo} days ago`
