import type { EventEvidence, EventKind, Evidence } from '../../evidence/evidence-schema.ts'
import { roadPositions, type WheelPosition } from '../../wheels.ts'

export type EventFacts = {
  /** Whether the evidence mentions the event, as having happened or not. */
  readonly asked: (kind: string) => boolean
  /** Whether the event is known to have happened, at this wheel if one is given. */
  readonly happened: (kind: EventKind, wheel?: WheelPosition) => boolean
  /** The wheels at which it is known to have happened: those named, or every road wheel where none was. */
  readonly wheelsOf: (kind: EventKind) => readonly WheelPosition[]
  /** Only the wheels that were named. */
  readonly namedWheelsOf: (kind: EventKind) => readonly WheelPosition[]
}

/** What happened to the vehicle before. An event that nobody asked about counts neither as yes nor as no. */
export const readEvents = (evidence: Evidence): EventFacts => {
  const happenings = new Map<EventKind, EventEvidence[]>()
  for (const event of evidence.events ?? []) {
    if (event.happened === false) continue
    happenings.set(event.kind, [...(happenings.get(event.kind) ?? []), event])
  }
  const namedWheelsOf = (kind: EventKind): WheelPosition[] =>
    (happenings.get(kind) ?? []).flatMap((event) => event.wheel ?? [])
  const namesNoWheel = (kind: EventKind): boolean =>
    (happenings.get(kind) ?? []).some((event) => event.wheel === undefined || event.wheel === null)
  return {
    asked: (kind) => (evidence.events ?? []).some((event) => event.kind === kind),
    happened: (kind, wheel) =>
      happenings.has(kind) &&
      (wheel === undefined || namesNoWheel(kind) || namedWheelsOf(kind).includes(wheel)),
    wheelsOf: (kind) =>
      namesNoWheel(kind) ? [...roadPositions, ...namedWheelsOf(kind)] : namedWheelsOf(kind),
    namedWheelsOf,
  }
}
