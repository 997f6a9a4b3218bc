import type { Length } from '../units/length-units.ts'
import { wearBar } from './tread-limits.ts'

/** What an inspection requires of a tire's grooves. */
export type TreadRule = {
  readonly name: string
  /** A groove with less than this is under it. */
  readonly least: Length
  /** At how many of the three places two adjacent grooves have to be under it for the tire to be rejected. */
  readonly rejectsAt: 'every place' | 'any place'
  /** Whose rule it is, and what it does not cover. */
  readonly governs: string
}

const model = 'A model for state inspection: the rule of the state where the vehicle is inspected governs.'
const state = 'It governs inspections in that state only.'

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
  light: { name: '49 CFR 570.9(a)', least: wearBar, rejectsAt: 'every place', governs: model },
  heavyFront: {
    name: '49 CFR 570.62(a), front tire of a vehicle over 10,000 lb',
    least: { value: 4, unit: '1/32 in' },
    rejectsAt: 'every place',
    governs: model,
  },
  heavyOther: {
    name: '49 CFR 570.62(a), other tire of a vehicle over 10,000 lb',
    least: wearBar,
    rejectsAt: 'every place',
    governs: model,
  },
  utah: { name: 'Utah Admin. Code R714-160-8', least: wearBar, rejectsAt: 'every place', governs: state },
  pennsylvania: { name: '67 Pa. Code 175.80(e)(1)', least: wearBar, rejectsAt: 'any place', governs: state },
} as const satisfies Readonly<Record<string, TreadRule>>
