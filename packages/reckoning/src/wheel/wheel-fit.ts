import type { SheetStuds } from '../sheet.ts'
import type { Millimeters } from '../units/measured.ts'
import { type HubFit, hubFit } from './hub-fit.ts'
import { type OffsetShift, offsetShift, type WheelRim } from './offset-shift.ts'
import { type Engagement, threadEngagement } from './thread-engagement.ts'

type Seat = SheetStuds['seat']

/** A wheel, or what the vehicle has for one; `null`: not measured. */
export type WheelMeasured = {
  readonly holes: number | null
  readonly boltCircle: Millimeters | null
  /** The hub's diameter, or the wheel's bore. */
  readonly hub: Millimeters | null
  readonly rim: WheelRim | null
}

export type WheelFitOf = {
  readonly vehicle: WheelMeasured
  readonly wheel: WheelMeasured
  /** Of the nuts or bolts that will be used, and of the seats in the wheel. */
  readonly seats: { readonly fastener: Seat | null; readonly wheel: Seat | null }
  readonly thread: string | null
  /** Full turns by hand until a fastener seats, on this wheel. */
  readonly turns: number | null
  readonly sheetTurns: number | null
}

/** Why a wheel must not go on. */
export type WheelRefusal = 'holes' | 'bolt-circle' | 'hub' | 'seat' | 'turns'

/** What nobody has measured yet. */
export type WheelGap = 'holes' | 'bolt-circle' | 'hub' | 'offset' | 'seat' | 'turns'

export type WheelFit = {
  /** `open`: nothing speaks against it so far, and something is not measured. */
  readonly outcome: 'refused' | 'open' | 'fits'
  readonly refusals: readonly WheelRefusal[]
  readonly gaps: readonly WheelGap[]
  readonly hub: HubFit | null
  readonly shift: OffsetShift | null
  readonly engagement: Engagement | null
}

/** 114.3 and 115 mm are not the same circle. */
const sameCircle = 0.2 + 1e-9

/**
 * Whether a wheel that is not the vehicle's own goes on: its holes and their circle, the hub, the shape of the seats, and the
 * turns of the fasteners. What nobody measured counts as not measured, never as right. Where it comes to lie is said and not
 * judged: whether it clears is tried on the vehicle.
 *
 * @units mm, in for a rim's width, full turns
 * @limits not the load that the wheel carries, which is stamped into it; the vehicle maker's and the wheel maker's figures
 * govern
 * @source holes, circle and seats have to match: two pages on wheel nuts (read); the rest as in `hubFit`, `offsetShift` and
 * `threadEngagement`; 0.2 mm between two circles: this program's own rule
 */
export const wheelFit = ({ vehicle, wheel, seats, thread, turns, sheetTurns }: WheelFitOf): WheelFit => {
  const hub = vehicle.hub === null || wheel.hub === null ? null : hubFit(vehicle.hub, wheel.hub)
  const shift = vehicle.rim === null || wheel.rim === null ? null : offsetShift(vehicle.rim, wheel.rim)
  const engagement = thread === null || turns === null ? null : threadEngagement(thread, turns, sheetTurns)
  const differs: Readonly<Record<WheelRefusal, boolean | null>> = {
    holes: both(vehicle.holes, wheel.holes, (one, other) => one !== other),
    'bolt-circle': both(
      vehicle.boltCircle,
      wheel.boltCircle,
      (one, other) => Math.abs(one - other) > sameCircle,
    ),
    hub: hub && hub.outcome === 'does-not-go-on',
    seat: both(seats.fastener, seats.wheel, (one, other) => one !== other),
    turns:
      engagement === null || engagement.outcome === 'unreadable-thread'
        ? null
        : engagement.outcome.startsWith('short'),
  }
  const named = Object.entries(differs) as [WheelRefusal, boolean | null][]
  const refusals = named.flatMap(([what, isWrong]) => (isWrong === true ? [what] : []))
  const gaps: WheelGap[] = [
    ...named.flatMap(([what, isWrong]) => (isWrong === null ? [what] : [])),
    ...(shift === null ? (['offset'] as const) : []),
  ]
  return {
    outcome: refusals.length > 0 ? 'refused' : gaps.length > 0 ? 'open' : 'fits',
    refusals,
    gaps,
    hub,
    shift,
    engagement,
  }
}

const both = <T>(one: T | null, other: T | null, differ: (one: T, other: T) => boolean): boolean | null =>
  one === null || other === null ? null : differ(one, other)
