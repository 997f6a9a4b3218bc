import type { EventEvidence } from '@bayledger/reckoning/evidence/evidence'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

type EventKind = EventEvidence['kind']

/** The events to ask about at every write-up, in the customer's words; `atWheel`: the wheel matters. */
export const askedEvents: readonly { kind: EventKind; label: string; atWheel: boolean }[] = [
  { kind: 'rotation', label: 'Tires rotated', atWheel: false },
  { kind: 'tires-changed', label: 'New tires', atWheel: false },
  { kind: 'seasonal-wheels', label: 'Winter or summer set fitted', atWheel: false },
  { kind: 'used-wheel', label: 'A used wheel fitted', atWheel: true },
  { kind: 'aftermarket-wheels', label: 'Other wheels than the original', atWheel: false },
  { kind: 'sensor-replaced-elsewhere', label: 'A sensor replaced elsewhere', atWheel: true },
  { kind: 'battery-disconnected', label: 'Battery disconnected or changed', atWheel: false },
  { kind: 'control-module-work', label: 'Work on a control module', atWheel: false },
  { kind: 'collision', label: 'Collision or pothole', atWheel: true },
  { kind: 'sealant', label: 'A can of sealant used', atWheel: true },
  { kind: 'driven-low', label: 'Driven low or flat', atWheel: true },
  { kind: 'topped-up-before-arrival', label: 'Air added before coming', atWheel: false },
  { kind: 'dash-cam-added', label: 'Dash camera added', atWheel: false },
  { kind: 'charger-added', label: 'Phone charger added', atWheel: false },
  { kind: 'window-film-added', label: 'Window film added', atWheel: false },
  { kind: 'one-place-only', label: 'Only in one place', atWheel: false },
]

/**
 * The events as evidence. An event that was not named counts as "did not happen" only if each was asked; else it is absent,
 * which means "not asked".
 */
export const eventsAsEvidence = (
  named: readonly EventKind[],
  wheels: Readonly<Partial<Record<EventKind, WheelPosition>>>,
  askedEach: boolean,
): EventEvidence[] =>
  askedEvents.flatMap(({ kind }): EventEvidence[] => {
    if (!named.includes(kind)) return askedEach ? [{ kind, happened: false }] : []
    const wheel = wheels[kind]
    return [{ kind, happened: true, ...(wheel === undefined ? {} : { wheel }) }]
  })
