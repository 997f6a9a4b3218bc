import type { Length } from '../units/length-units.ts'
import { treadWords } from '../words/tread.ts'
import { wearBar } from './tread-limits.ts'

/** What an inspection requires of a tire's grooves. */
export type TreadRule = {
  readonly name: string
  /** A groove with less than this is under it. */
  readonly least: Length
  /** At how many of the three places two adjacent grooves have to be under it for the tire to be rejected. */
  readonly rejectsAt: 'every' | 'any'
  /** Whose rule it is, and what it does not cover. */
  readonly governs: string
}

const { model, thatState } = treadWords.governs

/**
 * The tread rules that are written out here, by the rule that requires them. No federal tread rule for private cars was
 * found: what governs is the inspection rule of the state, or the local code.
 *
 * @units 1/32 in
 * @limits four examples; a shop elsewhere needs its own state's rule
 * @source 49 CFR 570.62(a) (read); 49 CFR 570.9(a) (from memory); Utah Admin. Code R714-160-8 (read); 67 Pa. Code
 * 175.80(e)(1) (quoted)
 */
export const treadRules = {
  light: { name: '49 CFR 570.9(a)', least: wearBar, rejectsAt: 'every', governs: model },
  heavyFront: {
    name: treadWords.names.heavyFront,
    least: { value: 4, unit: '1/32 in' },
    rejectsAt: 'every',
    governs: model,
  },
  heavyOther: {
    name: treadWords.names.heavyOther,
    least: wearBar,
    rejectsAt: 'every',
    governs: model,
  },
  utah: { name: 'Utah Admin. Code R714-160-8', least: wearBar, rejectsAt: 'every', governs: thatState },
  pennsylvania: { name: '67 Pa. Code 175.80(e)(1)', least: wearBar, rejectsAt: 'any', governs: thatState },
} as const satisfies Readonly<Record<string, TreadRule>>
