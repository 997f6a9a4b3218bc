import type { Entry } from '@bayledger/ledger/entry'
import { type Move, nextMoves } from '@bayledger/ledger/questions/moves'
import type { OrderState } from '@bayledger/ledger/state'
import { listedId } from '@bayledger/reckoning/sensor/sensor-id'

/** Moves from an instant on; the first stage holds from the last entry. */
export type AgendaStage = { readonly from: string | null; readonly moves: readonly Move[] }

/** What the floor list shows of an order without folding it: nothing that entries cannot rebuild, no personal text. */
export type HeadProjection = {
  readonly locationId: string
  readonly customerId: string
  readonly vehicleId: string
  readonly promisedAt: string | null
  readonly waitsHere: boolean
  readonly assignedTo: string | null
  readonly isOpen: boolean
  readonly sealed: boolean
  readonly agenda: readonly AgendaStage[]
}

/** `at` is when the newest entry was received, so that a rebuild gives the same. */
export const projectHead = (state: OrderState, at: string): HeadProjection => {
  const { opened } = state
  if (!opened) throw new RangeError('an order that was never opened has no head')
  const until = state.wait && state.wait.until > at ? state.wait.until : null
  return {
    locationId: state.locationId ?? opened.locationId,
    customerId: opened.customerId,
    vehicleId: opened.vehicleId,
    promisedAt: opened.promisedAt,
    waitsHere: opened.waitsHere,
    assignedTo: state.assigned?.staffId ?? null,
    isOpen: !state.handedBack && !state.ended,
    sealed: state.reports.length > 0,
    agenda: [
      { from: null, moves: nextMoves(state, at) },
      ...(until === null ? [] : [{ from: until, moves: nextMoves(state, until) }]),
    ],
  }
}

/** The moves that hold at an instant: nothing is written because time passed. */
export const movesAt = (agenda: readonly AgendaStage[], now: string): readonly Move[] =>
  agenda.findLast(({ from }) => from === null || from <= now)?.moves ?? []

/** Rows of other aggregates that entries cause, each keyed by its entry. */
export type RowProjection = {
  readonly cycles: readonly { entryId: string; instrumentId: string; clicks: number }[]
  readonly parts: readonly { entryId: string; partNumber: string; quantity: number }[]
  readonly sensors: readonly { entryId: string; wheel: string; sensorId: string; how: 'read' | 'fitted' }[]
  readonly reports: readonly { entryId: string; number: string; sha256: string }[]
}

export const projectRows = (entries: readonly Entry[], earlier: readonly Entry[]): RowProjection => ({
  cycles: entries.flatMap((entry) =>
    (entry.kind === 'studs.torqued' || entry.kind === 'torque.checked') && entry.payload.clicked > 0
      ? [
          {
            entryId: entry.id,
            instrumentId: entry.payload.wrench.instrumentId,
            clicks: entry.payload.clicked,
          },
        ]
      : [],
  ),
  parts: entries.flatMap((entry) => {
    if (entry.kind === 'part.drawn')
      return [{ entryId: entry.id, partNumber: entry.payload.partNumber, quantity: -entry.payload.quantity }]
    if (entry.kind !== 'entry.struck') return []
    const struck = earlier.find(({ id }) => id === entry.payload.entryId)
    return struck?.kind === 'part.drawn'
      ? [{ entryId: entry.id, partNumber: struck.payload.partNumber, quantity: struck.payload.quantity }]
      : []
  }),
  sensors: entries.flatMap((entry): RowProjection['sensors'] => {
    if (entry.kind === 'sensor.fitted')
      return [sensorRow(entry.id, entry.payload.wheel, entry.payload.sensorId, 'fitted')]
    if (entry.kind !== 'wheel.checked' || entry.payload.sensor?.answer !== 'answered') return []
    const { id } = entry.payload.sensor
    return id === null ? [] : [sensorRow(entry.id, entry.payload.wheel, id, 'read')]
  }),
  reports: entries.flatMap((entry) =>
    entry.kind === 'report.sealed' && entry.given.reportNumber
      ? [{ entryId: entry.id, number: entry.given.reportNumber, sha256: entry.payload.pdfSha256 }]
      : [],
  ),
})

const sensorRow = (entryId: string, wheel: string, sensorId: string, how: 'read' | 'fitted') => ({
  entryId,
  wheel,
  sensorId: listedId(sensorId),
  how,
})
