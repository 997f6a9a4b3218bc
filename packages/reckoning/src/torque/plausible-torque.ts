import type { Torque } from '../quantity.ts'
import type { Refusal } from '../reading.ts'
import { type TorqueUnit, torqueIn } from '../units/torque-units.ts'
import { readThread, type ThreadFault } from './read-thread.ts'
import type { Thread } from './thread.ts'

/**
 * What is odd about a wheel torque typed for a stud, for whoever confirms it from the maker's source. A
 * guard against typing errors, never a source: a figure inside the band is still not verified, and the vehicle maker's
 * figure governs even outside it. Empty where nothing is odd or the table does not hold the stud's size.
 *
 * @units The figure in the unit that its source prints; the bands in lbf·ft.
 * @limits M10, M12, M14, M16; 7/16, 1/2, 9/16 and 5/8 inch, whatever the pitch.
 * @source Common practice, no source: made wide, because published charts and vehicle makers differ.
 */
export const torqueDoubts = (thread: string, torque: Torque): TorqueDoubt[] => {
  const read = readThread(thread)
  if (!read.ok) return [{ code: 'thread-unreadable', refusal: read }]
  const band = studBands[sizeOf(read.value)]
  return band ? bandDoubts(torque, band, ['lbf·ft', 'N·m', 'lbf·in']) : []
}

/** A fastener of a wheel sensor whose torque is on the sensor maker's sheet. */
export type StemPart = 'stem-nut' | 'stem-screw' | 'valve-core'

/**
 * What is odd about the torque typed for a sensor's stem nut or screw, or for a valve core: it is small, mostly printed in
 * lbf·in, and so twelve times wrong where it is taken for lbf·ft. A guard, never a source: the same wheel may take 62
 * or 106 lbf·in by the version of its sensor, so the sensor maker's figure governs.
 *
 * @units The figure in the unit that its source prints; the bands in lbf·in.
 * @source Common practice, no source: nuts of 35 to 106 lbf·in were met, screws of 12 to 22; cores of 2 to 5 were
 * read in the trade press.
 */
export const stemTorqueDoubts = (part: StemPart, torque: Torque): TorqueDoubt[] =>
  bandDoubts(torque, stemBands[part], ['lbf·in', 'N·m'])

/**
 * A torque in the unit it was printed in, with the other unit that wrenches carry: "100 lbf·ft (136 N·m)".
 *
 * @units The other unit is for reading; a wrench is set to the figure as it was printed.
 * @source Units by definition.
 */
export const torqueWords = (torque: Torque): string => {
  const other = torque.unit === 'N·m' ? 'lbf·ft' : 'N·m'
  const digits = torque.unit === 'lbf·in' ? 1 : 0
  return `${torque.value} ${torque.unit} (${torqueIn(other, torque).toFixed(digits)} ${other})`
}

/** What is odd about a torque that was typed. */
export type TorqueDoubt =
  | { readonly code: 'thread-unreadable'; readonly refusal: Refusal<ThreadFault> }
  /** The figure is usual in the unit typed, and the same number is usual in these units too. */
  | { readonly code: 'usual-in-other-units'; readonly units: readonly TorqueUnit[] }
  /** The figure is outside the band; the same number would be usual in these units. */
  | { readonly code: 'outside-the-usual'; readonly usual: Band; readonly meant: readonly TorqueUnit[] }

/** The torques that are usual, both ends included. */
export type Band = { readonly low: number; readonly high: number; readonly unit: TorqueUnit }

const bandOf = (low: number, high: number, unit: TorqueUnit): Band => ({ low, high, unit })

const studBands: Readonly<Record<string, Band>> = {
  M10: bandOf(35, 65, 'lbf·ft'),
  M12: bandOf(65, 115, 'lbf·ft'),
  M14: bandOf(80, 165, 'lbf·ft'),
  M16: bandOf(120, 220, 'lbf·ft'),
  '7/16': bandOf(50, 85, 'lbf·ft'),
  '1/2': bandOf(70, 115, 'lbf·ft'),
  '9/16': bandOf(100, 180, 'lbf·ft'),
  '5/8': bandOf(120, 220, 'lbf·ft'),
}

const stemBands: Readonly<Record<StemPart, Band>> = {
  'stem-nut': bandOf(30, 110, 'lbf·in'),
  'stem-screw': bandOf(10, 25, 'lbf·in'),
  'valve-core': bandOf(2, 5, 'lbf·in'),
}

const sizeOf = (thread: Thread): string =>
  thread.system === 'metric' ? `M${thread.diameter}` : `${thread.numerator}/${thread.denominator}`

const bandDoubts = (torque: Torque, usual: Band, printed: readonly TorqueUnit[]): TorqueDoubt[] => {
  const units = printed.filter(
    (unit) => unit !== torque.unit && isInside({ value: torque.value, unit }, usual),
  )
  if (!isInside(torque, usual)) return [{ code: 'outside-the-usual', usual, meant: units }]
  return units.length > 0 ? [{ code: 'usual-in-other-units', units }] : []
}

const isInside = (torque: Torque, { low, high, unit }: Band): boolean => {
  const value = torqueIn(unit, torque)
  return value >= low && value <= high
}
