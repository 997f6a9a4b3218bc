/** What is known about the old sensor when the ID of the new one is chosen. */
export type OldSensor = {
  /** Read as received, or in the vehicle's history. */
  readonly idKnown: boolean
  readonly afterwards: 'destroyed' | 'stays-in-use'
  /** The new sensor goes to the wheel position of the old one. */
  readonly samePosition: boolean
}

/** Why the old ID must not be copied: two sensors would send it, or the vehicle expects another one there. */
export type NoCopy = 'old-id-unknown' | 'old-sensor-in-use' | 'other-position'

/** The two IDs that a new sensor can get, each with whether the vehicle needs a relearn after it. */
export type IdChoices = {
  readonly copy:
    | { readonly allowed: true; readonly relearn: 'often-none' }
    | { readonly allowed: false; readonly why: NoCopy }
  /** A new ID is always allowed: no other sensor sends it. */
  readonly new: { readonly relearn: 'required' }
}

/**
 * The two IDs that a new sensor can get, the old one's copied or a new one, and what follows from each. After either,
 * the sensor is read back by itself, five feet or more from every other. A copied ID is double if the old
 * sensor is still alive, even weakly, or if it was read from the wheel beside it.
 *
 * @limits The vehicle's maker decides whether it needs a relearn after a copy.
 * @source common practice, no source
 */
export const idChoices = (old: OldSensor): IdChoices => {
  const why = againstCopy(old)
  return {
    copy: why === null ? { allowed: true, relearn: 'often-none' } : { allowed: false, why },
    new: { relearn: 'required' },
  }
}

const againstCopy = ({ idKnown, afterwards, samePosition }: OldSensor): NoCopy | null => {
  if (!idKnown) return 'old-id-unknown'
  if (afterwards === 'stays-in-use') return 'old-sensor-in-use'
  return samePosition ? null : 'other-position'
}
