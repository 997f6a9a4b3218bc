/** What is known about the old sensor when the ID of the new one is chosen. */
export type OldSensor = {
  /** Read as received, or in the vehicle's history. */
  readonly idKnown: boolean
  readonly afterwards: 'destroyed' | 'stays-in-use'
  /** The new sensor goes to the wheel position of the old one. */
  readonly samePosition: boolean
}

export type IdChoice = {
  readonly allowed: boolean
  readonly why: string
  readonly relearn: 'required' | 'often-none'
  readonly danger: string
  readonly record: string
}

/**
 * The two IDs that a new sensor can get, the old one's copied or a new one: which is allowed and why, and what follows
 * from it. After either, the sensor is read back by itself, five feet or more from every other.
 *
 * @limits The vehicle's maker decides whether it needs a relearn after a copy.
 * @source common practice, no source
 */
export const idChoices = (old: OldSensor): { readonly copy: IdChoice; readonly new: IdChoice } => {
  const against = againstCopy(old)
  return {
    copy: {
      allowed: against === null,
      why:
        against ??
        'The old ID is known, its sensor is destroyed, and the vehicle hears the same ID at the same place.',
      relearn: 'often-none',
      danger:
        'A copied ID is double if the old sensor lives on, even weakly, or if it was read from the wheel beside. Stored faults stay until the vehicle is driven.',
      record: 'From which wheel and when the old ID was read, and that the old sensor is destroyed.',
    },
    new: {
      allowed: true,
      why:
        against === null ? 'A new ID is never double.' : `A new ID is the only way: ${lowerFirst(against)}`,
      relearn: 'required',
      danger: 'Without the relearn the vehicle does not know it and the warning light comes back.',
      record: 'The new ID, and the relearn.',
    },
  }
}

const againstCopy = ({ idKnown, afterwards, samePosition }: OldSensor): string | null => {
  if (!idKnown) return 'Nobody knows the old ID.'
  if (afterwards === 'stays-in-use') return 'The old sensor stays in use, and two sensors would send one ID.'
  return samePosition
    ? null
    : 'The new sensor goes to another wheel than the old one, where the vehicle expects another ID.'
}

const lowerFirst = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1)
