import { inMillimeters, type Length } from '../units/length-units.ts'
import { treadWords } from '../words/tread.ts'
import { wearBar } from './tread-limits.ts'
import type { TreadRule } from './tread-rules.ts'

/** The major grooves at one place from one shoulder to the other, each beside the wear bar, not on it. */
export type Grooves = readonly [Length, Length, ...Length[]]

/** Three places, about a third of the way around the tire apart. */
export type TreadReadings = readonly [Grooves, Grooves, Grooves]

/** A groove by its place and by its number from the first shoulder, both from 1. */
export type GrooveAt = { readonly place: number; readonly groove: number }

export type TreadJudgment = {
  /** `warning`: some groove is under the rule's depth or down to the wear bar, but the rule lets the tire pass. */
  readonly verdict: 'reject' | 'warning' | 'pass'
  /** Grooves with less than the rule requires. */
  readonly under: readonly GrooveAt[]
  /** Grooves worn down to the wear bar. */
  readonly atWearBar: readonly GrooveAt[]
  readonly says: string
}

/**
 * What a rule says of a tire's tread. Two adjacent grooves have to be under the depth: a single one, or two that are not
 * adjacent, do not reject the tire; they are a warning. 2/32, 2/32 and 3/32 in pass a rule of "less than 2/32".
 *
 * @formula at a place: some groove and the next one both < the rule's depth; rejected when so at every place, or at any,
 * as the rule has it; at the wear bar: depth ≤ 2/32 in
 * @units 1/32 in or mm as read; 2/32 in is 1.5875 mm
 * @limits the pair may be another one at another place, which the texts leave open: the stricter reading
 * @source the rules of `treadRules`
 */
export const judgeTread = (readings: TreadReadings, rule: TreadRule): TreadJudgment => {
  const least = inMillimeters(rule.least)
  const under = where(readings, (depth) => depth < least)
  const atWearBar = where(readings, (depth) => depth <= inMillimeters(wearBar))
  const pairUnder = (grooves: Grooves): boolean =>
    grooves.some((one, at) => {
      const next = grooves[at + 1]
      return next !== undefined && inMillimeters(one) < least && inMillimeters(next) < least
    })
  const rejected = rule.rejectsAt === 'every' ? readings.every(pairUnder) : readings.some(pairUnder)
  const verdict = rejected ? 'reject' : under.length > 0 || atWearBar.length > 0 ? 'warning' : 'pass'
  return { verdict, under, atWearBar, says: treadWords.says(verdict, rule.name, rule.governs) }
}

const where = (readings: TreadReadings, holds: (millimeters: number) => boolean): GrooveAt[] =>
  readings.flatMap((grooves, place) =>
    grooves.flatMap((depth, groove) =>
      holds(inMillimeters(depth)) ? { place: place + 1, groove: groove + 1 } : [],
    ),
  )
