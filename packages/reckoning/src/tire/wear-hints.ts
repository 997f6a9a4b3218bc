/** Tread from one shoulder to the other, in 32nds of an inch; inner is toward the vehicle. */
export type TreadAcross = { readonly inner: number; readonly middle: number; readonly outer: number }

/** What wear across a tread looks like. */
export type WearHint = 'middle' | 'both-shoulders' | 'inner-shoulder' | 'outer-shoulder' | 'even'

/** What a person sees or feels around the tire: dips at intervals, or blocks of the tread with one sharp edge. */
export const wearsSeen = ['none', 'cups', 'feathers'] as const
export type WearSeen = (typeof wearsSeen)[number]

/** Depths are read to a 32nd; one alone is no pattern. */
const patternFrom32nds = 2

/**
 * What the wear across a tread hints at: pressure that was too high (the middle is lower than both shoulders), pressure that was
 * too low (both shoulders are lower than the middle), or a wheel that is not aligned (one shoulder is lower than the other). A
 * hint names what to check and is no verdict: how a vehicle is driven and its own construction wear tires the same way.
 *
 * @formula a shoulder is low where it has 2/32 in less than the other; else the middle is low where it has 2/32 in less than
 * each shoulder, and both shoulders are low where each has 2/32 in less than the middle
 * @units 1/32 in
 * @limits before the tire was rotated it may have worn at another wheel
 * @source middle, both shoulders, one shoulder: a study guide for a mechanic's examination, and two repair pages (read); 2/32 in:
 * this program's own rule, after readings to 1/32 in
 */
export const wearHint = ({ inner, middle, outer }: TreadAcross): WearHint => {
  if (inner <= outer - patternFrom32nds) return 'inner-shoulder'
  if (outer <= inner - patternFrom32nds) return 'outer-shoulder'
  if (middle <= Math.min(inner, outer) - patternFrom32nds) return 'middle'
  return middle >= Math.max(inner, outer) + patternFrom32nds ? 'both-shoulders' : 'even'
}
