import type { SheetRelearn, SpecificationSheet } from '../sheet.ts'
import { roadPositions, type WheelPosition } from '../wheels.ts'

/** A figure of the sheet; `null` where the sheet does not have it, which is said and never filled in. */
type OnSheet = number | null

type Procedure = {
  /** The sheet's own words, from the vehicle maker's procedure. */
  readonly entry: string
  readonly confirmation: string
  readonly exit: string
  readonly knownTrap: string | null
}

/** The vehicle learns by itself: parked for a time, then driven. */
export type AutomaticRelearn = Procedure & {
  readonly method: 'automatic'
  readonly parkMinutes: OnSheet
  readonly driveMinutes: OnSheet
  readonly driveSpeedMph: OnSheet
}

/** The vehicle is put into its learn mode and each sensor is triggered in turn, within a time. */
export type StationaryRelearn = Procedure & {
  readonly method: 'stationary'
  readonly timeLimitMinutes: OnSheet
  readonly order: readonly WheelPosition[]
}

/** Every sensor is read first; the IDs are then sent through the diagnostic connector and read back. */
export type ConnectorRelearn = Procedure & {
  readonly method: 'connector'
  readonly order: readonly WheelPosition[]
  /** How long the light may stay on while driving, until each sensor was heard once. */
  readonly driveMinutes: OnSheet
}

/** No sensors: the vehicle is told that the tires are right, and learns them while it is driven. */
export type ResetProcedure = Procedure & { readonly method: 'reset'; readonly driveMinutes: OnSheet }

export type RelearnTemplate = AutomaticRelearn | StationaryRelearn | ConnectorRelearn | ResetProcedure

/**
 * A sheet's procedure as the template of its method: each has only the figures that belong to it. Wheels come in the
 * order LF, RF, RR, LR, and the spare last where the vehicle listens to it.
 *
 * @units min, mi/h
 * @limits A figure that the sheet lacks stays `null`. The vehicle maker's procedure, which the sheet writes down, governs.
 * @source Methods and order: common practice, no source. Figures: the sheet.
 */
export const relearnTemplate = (
  relearn: SheetRelearn,
  { spare, spareMonitored }: Pick<SpecificationSheet, 'spare' | 'spareMonitored'>,
): RelearnTemplate => {
  const { method, entry, confirmation, exit, knownTrap } = relearn
  const procedure = { entry, confirmation, exit, knownTrap }
  const order: readonly WheelPosition[] =
    spareMonitored && spare !== 'none' ? [...roadPositions, 'SP'] : roadPositions
  const { parkMinutes, driveMinutes, driveSpeedMph, timeLimitMinutes } = relearn
  switch (method) {
    case 'automatic':
      return { method, ...procedure, parkMinutes, driveMinutes, driveSpeedMph }
    case 'stationary':
      return { method, ...procedure, timeLimitMinutes, order }
    case 'connector':
      return { method, ...procedure, order, driveMinutes }
    case 'reset':
      return { method, ...procedure, driveMinutes }
  }
}

/** What is known of a method anywhere, beside the sheet's own words. */
export type MethodNotes = {
  readonly lightMeanwhile: string
  readonly failsBy: string
  readonly provedBy: string
}

/**
 * What the light does while a method runs, by what it fails, and what proves that it worked.
 *
 * @source Common practice, no source.
 */
export const methodNotes = (method: RelearnTemplate['method']): MethodNotes => notes[method]

const notes: Readonly<Record<RelearnTemplate['method'], MethodNotes>> = {
  automatic: {
    lightMeanwhile: 'The light stays as it was until the vehicle has learned.',
    failsBy: 'Too slow, stop-and-go, or other wheels near the start.',
    provedBy:
      'The stored IDs read back at their places, or a display that shows every wheel; then 20 minutes without a flash.',
  },
  stationary: {
    lightMeanwhile: 'Many vehicles flash the light or show a message the whole time.',
    failsBy: 'Time running out, a wheel skipped or out of order, low vehicle voltage.',
    provedBy: 'A confirmation from every wheel, and the stored IDs read back at their places.',
  },
  connector: {
    lightMeanwhile: 'The light may stay on until the first messages come, some minutes into driving.',
    failsBy: 'A digit mistyped, the wrong notation, two places exchanged.',
    provedBy: 'The IDs read back are those sent, place by place; then a drive.',
  },
  reset: {
    lightMeanwhile: 'The light goes out, and the vehicle goes on learning while it is driven.',
    failsBy: 'A tire still low when it is told that all are right.',
    provedBy: 'The vehicle confirms, and the light stays out on the drive.',
  },
}
