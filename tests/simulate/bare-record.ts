import type { Draft, Entry } from '@bayledger/ledger/entry'
import { roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'

/** The part of an entry that is read here; a device's own unsent one was not received, and nothing is given to it. */
type Line = Pick<Draft, 'id' | 'kind' | 'payload'> &
  Pick<Entry, 'given'> & { readonly receivedAt: string | null }

/** Entries with which the vehicle moves on the road, or with which its keys go back. */
export const movesOnTheRoad = ({ kind }: Pick<Line, 'kind'>): boolean =>
  kind === 'drive.left' || kind === 'drive.done' || kind === 'report.sealed' || kind === 'order.handed_back'

/** Whether its writer had not heard of what speaks against it: a person has to look. */
export const isHeardLate = ({ given }: Pick<Line, 'given'>): boolean =>
  (given.holds ?? []).some(({ code }) => code === 'heard-late')

/**
 * Wheels that came off and are not on, torqued, torqued again and checked since, read from the bare list of entries and
 * not from the state that they fold to, so that the ledger's own gates are not checked by themselves. Of a step that was
 * recorded twice the first record that stands counts. The server marks the second one; one that was not sent yet has no
 * mark. Either may be a new record after all, of a step that a withdrawal has opened again: a wheel is loose if it is so
 * whichever of them count.
 */
export const looseWheels = (entries: readonly Line[]): WheelPosition[] => {
  const struck = new Set(
    entries.flatMap(({ kind, payload }) =>
      kind === 'entry.struck' ? [(payload as { entryId: string }).entryId] : [],
    ),
  )
  const standing = entries.filter(({ id }) => !struck.has(id))
  return roadPositions.filter((wheel) => isLoose(standing, wheel))
}

/** What secures a wheel, in this order. */
const securing: readonly (readonly [Line['kind'], string?])[] = [
  ['wheel.mounted'],
  ['studs.torqued', 'full'],
  ['studs.torqued', 'again'],
  ['torque.checked'],
]

const isLoose = (standing: readonly Line[], wheel: WheelPosition): boolean => {
  const placesOf = (kind: Line['kind'], round?: string) =>
    standing.flatMap((line, at) => {
      const { wheel: of, round: sealed } = line.payload as {
        readonly wheel?: string
        readonly round?: string
      }
      const isIt = line.kind === kind && of === wheel && (round === undefined || sealed === round)
      return isIt ? [{ at, isSecond: isSecondRecord(standing, line, at) }] : []
    })
  const off = placesOf('wheel.removed').findLast(({ isSecond }) => !isSecond)
  let after = off?.at ?? -1
  return (
    off !== undefined &&
    securing.some(([kind, round]) => {
      const places = placesOf(kind, round)
      const last = places.findLast(({ isSecond }) => !isSecond)?.at ?? -1
      const next = places.find(({ at }) => at > after && at >= last)
      after = next?.at ?? after
      return next === undefined
    })
  )
}

const isSecondRecord = (standing: readonly Line[], line: Line, at: number): boolean =>
  (line.receivedAt === null || isMarked(line)) &&
  stepOf(line) !== null &&
  standing.slice(0, at).some((one) => stepOf(one) === stepOf(line))

const isMarked = ({ given }: Line): boolean =>
  (given.holds ?? []).some(
    (hold) => hold.code === 'heard-late' && 'values' in hold && hold.values.refusal === 'STEP_ALREADY_CLOSED',
  )

const stepOf = ({ payload }: Line): string | null => ('stepKey' in payload ? payload.stepKey : null)
