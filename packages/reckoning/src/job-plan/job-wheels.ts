import { cameFrom, type Moves, movedPlaces } from '../rotation/moves.ts'
import type { RotationDoubt } from '../rotation/rotation-doubt.ts'
import { patternMoves, type RotationPattern } from '../rotation/rotation-pattern.ts'
import { sheetDoubts } from '../rotation/sheet-doubts.ts'
import type { SpecificationSheet } from '../sheet.ts'
import { inReadingOrder, type RoadPosition, roadPositions, type WheelPosition } from '../wheels.ts'
import type { PlannedWork } from './authorized-work.ts'
import { repairFastenerKey } from './step-keys.ts'

/** Which wheels a job touches, and how. */
export type JobWheels = {
  /** Wheels whose tire is opened. */
  readonly opened: readonly WheelPosition[]
  /** Wheels that leave their hub; each is torqued and checked by a second person. */
  readonly cameOff: readonly RoadPosition[]
  /** Wheels that stay on and whose torque is checked again. */
  readonly torquedAgain: readonly RoadPosition[]
  /** Hubs of which damaged fasteners are renewed. */
  readonly fastened: readonly RoadPosition[]
  /** The hub that the sound spare goes on to, if the vehicle leaves on it. */
  readonly spareTo: RoadPosition | null
  readonly swapsSet: boolean
  /** The moves of the rotation, if there is one; empty if something speaks against it. */
  readonly moves: Moves
  readonly rotation: { readonly pattern: RotationPattern; readonly doubts: readonly RotationDoubt[] } | null
}

/**
 * What authorized works mean for each wheel. A rotation that the sheet refuses, or that comes with another set of
 * wheels, moves nothing.
 *
 * @source This program's own rule.
 */
export const jobWheels = (sheet: SpecificationSheet, works: readonly PlannedWork[]): JobWheels => {
  const opened = inReadingOrder(works.flatMap((work) => (opensTire(work) ? [work.wheel] : [])))
  const swapsSet = works.some(({ kind }) => kind === 'swap-wheels')
  const rotation = rotationOf(sheet, works, swapsSet)
  const moves = rotation && rotation.doubts.length === 0 ? patternMoves(rotation.pattern) : {}
  const fastened = roadPositions.filter((wheel) =>
    works.some((work) => work.kind === 'repair-fastener' && work.wheel === wheel),
  )
  const spareTo = works.flatMap((work) => (work.kind === 'fit-spare' ? [work.wheel] : []))[0] ?? null
  const leaves = new Set<WheelPosition>([
    ...(spareTo === null ? [] : [spareTo]),
    ...opened,
    ...fastened,
    ...movedPlaces(moves),
    ...(swapsSet ? roadPositions : []),
  ])
  const cameOff = roadPositions.filter((wheel) => leaves.has(wheel))
  const again = new Set(works.flatMap((work) => (work.kind === 'torque-again' ? [work.wheel] : [])))
  const torquedAgain = roadPositions.filter((wheel) => again.has(wheel) && !leaves.has(wheel))
  return { opened, cameOff, torquedAgain, fastened, spareTo, swapsSet, moves, rotation }
}

/**
 * The step after which the wheel that was at a place is ready to go on somewhere.
 *
 * @source This program's own rule.
 */
export const readyKey = ({ opened }: JobWheels, stood: WheelPosition): string => {
  if (opened.includes(stood)) return `${stood}.tire.balance`
  return stood === 'SP' ? 'SP.wheel.out' : `${stood}.wheel.off`
}

/**
 * What a wheel must wait for to go on at a place: the place is free, and the wheel that goes there is ready.
 *
 * @source This program's own rule.
 */
export const beforeFitting = (job: JobWheels, place: WheelPosition): string[] => {
  const own = place === 'SP' ? 'SP.wheel.out' : `${place}.wheel.off`
  const from = place === job.spareTo ? 'SP' : cameFrom(job.moves, place)
  const ready = readyKey(job, from)
  const repaired = job.fastened.some((wheel) => wheel === place) ? [repairFastenerKey(place)] : []
  return [...(from === place ? [ready] : [own, ready]), ...repaired]
}

type TireWork = Extract<
  PlannedWork,
  { kind: 'fit-sensor' | 'service-stem' | 'find-leak' | 'repair-puncture' | 'fit-tire' }
>

const opensTire = (work: PlannedWork): work is TireWork =>
  work.kind === 'fit-sensor' ||
  work.kind === 'service-stem' ||
  work.kind === 'find-leak' ||
  work.kind === 'repair-puncture' ||
  work.kind === 'fit-tire'

const rotationOf = (
  sheet: SpecificationSheet,
  works: readonly PlannedWork[],
  swapsSet: boolean,
): JobWheels['rotation'] => {
  const patterns = [...new Set(works.flatMap((work) => (work.kind === 'rotate' ? [work.pattern] : [])))]
  const [pattern, another] = patterns
  if (pattern === undefined) return null
  return {
    pattern,
    doubts: [
      ...(swapsSet ? (['other-set-in-same-order'] as const) : []),
      ...(another === undefined ? [] : (['two-patterns'] as const)),
      ...sheetDoubts(patternMoves(pattern), sheet),
    ],
  }
}
