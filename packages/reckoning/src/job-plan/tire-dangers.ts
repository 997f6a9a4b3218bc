import { type SpecificationSheet, tiresOf } from '../sheet.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'

/** What is known or suspected of tires before they are opened, from the findings. */
export type TireDangers = {
  /** Tires with sealant in them, or that may have some. */
  readonly sealant: readonly WheelPosition[]
  /** Tires that may be damaged inside from running low. */
  readonly runLow: readonly WheelPosition[]
}

export const noDangers: TireDangers = { sealant: [], runLow: [] }

/** What a wheel's steps must respect. */
export type TireCare = {
  readonly sealant: boolean
  readonly runLow: boolean
  /** Filled only in a restraining device, with a remote valve and a stop to look and listen. */
  readonly restrained: boolean
}

/**
 * How one wheel's tire must be handled. A tire that was run low is filled in restraint unless the sheet says that it is
 * a passenger tire, because the cords of a light truck tire, or of one that nobody knows, may be steel and can burst
 * along the sidewall.
 *
 * @limits The tire maker's own rules govern.
 * @source A trade association's advice on sidewalls that burst along the cords, from memory.
 */
export const careOf = (sheet: SpecificationSheet, dangers: TireDangers, wheel: WheelPosition): TireCare => {
  const loadClass = tiresOf(sheet)?.[axleOf(wheel)]?.loadClass
  const isPassenger = loadClass === 'SL' || loadClass === 'XL'
  const runLow = dangers.runLow.includes(wheel)
  return { sealant: dangers.sealant.includes(wheel), runLow, restrained: runLow && !isPassenger }
}
