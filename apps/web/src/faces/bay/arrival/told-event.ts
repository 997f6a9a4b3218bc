import type { EventEvidence } from '@bayledger/reckoning/evidence/evidence'
import { roadPositions } from '@bayledger/reckoning/wheels'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'

/** An event as it was answered row by row; a day or a wheel that was not named is left out. */
export const eventOf = (kind: EventEvidence['kind'], values: RowValues): EventEvidence => {
  if (values.happened !== 'yes') return { kind, happened: false }
  const wheel = roadPositions.find((position) => position === values.wheel)
  const daysAgo = numberFrom(values.daysAgo ?? '')
  return {
    kind,
    happened: true,
    ...(wheel === undefined ? {} : { wheel }),
    ...(daysAgo === null ? {} : { daysAgo }),
  }
}

/** The newest answer about a kind of event replaces earlier ones, except those about other wheels. */
export const withEvent = (events: readonly EventEvidence[], event: EventEvidence): EventEvidence[] => [
  ...events.filter(
    (earlier) =>
      earlier.kind !== event.kind ||
      (event.happened === true &&
        event.wheel != null &&
        earlier.wheel != null &&
        earlier.wheel !== event.wheel),
  ),
  event,
]
