import type { SheetRelearn, SpecificationSheet } from '../sheet.ts'
import { roadPositions, type WheelPosition } from '../wheels.ts'

/** A figure from the sheet, or `null` if the sheet lacks it; a missing figure is reported and never filled in. */
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

/** No sensors: someone confirms to the vehicle that the tires are right, and it learns them while it is driven. */
export type ResetProcedure = Procedure & { readonly method: 'reset'; readonly driveMinutes: OnSheet }

export type RelearnTemplate = AutomaticRelearn | StationaryRelearn | ConnectorRelearn | ResetProcedure

/**
 * The wheels that a vehicle learns, in the order in which their sensors are triggered or read: LF, RF, RR, LR, and the
 * spare last where the vehicle listens to it.
 *
 * @source Common practice, no source.
 */
export const relearnOrder = ({
  spare,
  spareMonitored,
}: Pick<SpecificationSheet, 'spare' | 'spareMonitored'>): readonly WheelPosition[] =>
  spareMonitored && spare !== 'none' ? [...roadPositions, 'SP'] : roadPositions

/**
 * A sheet's procedure as the template of its method: each has only the figures that belong to it.
 *
 * @units min, mi/h
 * @limits A figure that the sheet lacks stays `null`. The vehicle maker's procedure, which the sheet writes down, governs.
 * @source Methods and order: common practice, no source. Figures: the sheet.
 */
export const relearnTemplate = (relearn: SheetRelearn, order: readonly WheelPosition[]): RelearnTemplate => {
  const { method, entry, confirmation, exit, knownTrap } = relearn
  const procedure = { entry, confirmation, exit, knownTrap }
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
