import { inReadingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'

/** How a language names wheels and joins them. */
export type WheelsWording = {
  readonly names: Readonly<Record<WheelPosition, string>>
  readonly allFour: string
  /** Joins the last name of a list to those before it. */
  readonly and: string
}

/** Wheels in reading order: "left front", "left front and left rear", "all four". */
export const wheelList = (words: WheelsWording, wheels: readonly WheelPosition[]): string => {
  const named = inReadingOrder(wheels)
  if (named.length === 4 && !named.includes('SP')) return words.allFour
  const names = named.map((wheel) => words.names[wheel])
  const last = names.pop() ?? ''
  return names.length === 0 ? last : `${names.join(', ')} ${words.and} ${last}`
}
