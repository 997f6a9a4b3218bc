import * as z from 'zod/mini'
import type { CodeClass, FastenerDamage, TireDamage, Units } from '../evidence/evidence-schema.ts'
import type { WheelPosition } from '../wheels.ts'

/** What the value of a field shows. The words for each are made where people read them. */
export const ReasonCode = z.enum([
  ...(['no-gauge-value', 'not-seen-yet', 'silent-not-asked-twice', 'plain-stem-not-asked-twice'] as const),
  ...(['same-id-elsewhere', 'same-id-elsewhere-read-twice', 'label-not-verified', 'not-known'] as const),
  ...(['no-tire-holds-that', 'temperature-out-of-range', 'read-before-change'] as const),
  ...(['at-or-under-share-of-label', 'at-or-under-limit', 'driven-low', 'run-low-dust'] as const),
  ...(['sealant-seen', 'sealant-reported', 'hotter-than-others', 'stem-cracked', 'stem-leaks'] as const),
  ...(['fasteners-damaged', 'tire-damaged', 'tread-worn-out', 'damaged-inside'] as const),
  ...(['at-or-under-warning-point', 'cold-at-or-under-warning-point', 'within-hold'] as const),
  ...(['sensor-within-hold', 'no-light', 'cold-under-label', 'cold-above-sidewall-maximum'] as const),
  ...(['cold-at-sidewall-maximum', 'cold-under-mate', 'cold-as-other-axle', 'lost-since-reading'] as const),
  ...(['colder-air-explains', 'air-denser-here', 'overnight-at-or-under-warning-point'] as const),
  ...(['compares-with-earlier-wheels', 'solid-with-right-tires', 'fault-not-pressure'] as const),
  ...(['none-fitted', 'no-sensors-expected', 'answers-all-the-same'] as const),
  ...(['silent-while-others-answered', 'vehicle-misses-it-too', 'silent', 'plain-stem'] as const),
  ...(['no-sensor-heard-here', 'battery-low', 'vehicle-listens-on', 'refused-while-others-learned'] as const),
  ...(['corroded', 'near-end-of-battery-life', 'near-usual-battery-life'] as const),
  ...(['off-by-another-amount', 'under-gauge', 'no-air-at-that-temperature', 'did-not-follow'] as const),
  ...(['nothing-in-inflated-tire', 'not-stored', 'stored-unheard', 'stored-here-heard-elsewhere'] as const),
  ...(['unknown-here-known-elsewhere', 'unknown-other-frequency-used-wheel'] as const),
  ...(['on-another-vehicle', 'same-in-hexadecimal', 'code-stored', 'code-stored-as'] as const),
  ...(['answers-despite-code', 'no-ids-stored', 'never-stops-flashing', 'dark-at-key-on'] as const),
  ...(['changed-just-now', 'not-driven-long-enough', 'solid-with-clear-tires'] as const),
  ...(['fault-with-matching-sensors', 'corner-struck', 'our-recent-work', 'our-part-in-warranty'] as const),
  ...(['beyond-repair-limits', 'puncture-seen', 'under-label'] as const),
  ...(['by-date-code', 'in-32nds', 'light-off-all-checked'] as const),
  ...(['happens-there-only', 'added-to-vehicle', 'fitted', 'at-the-time'] as const),
  /** For a diagnosis that was written in words, before reasons had codes. */
  'as-written',
])
export type ReasonCode = z.infer<typeof ReasonCode>

type Unit = { readonly unit: Units['pressure'] }
type Point = Unit & { readonly point: number }
type Cold = Unit & { readonly cold: number; readonly label: number }
type Sidewall = Cold & { readonly sidewall: number }
type Hold = Point & { readonly hold: number }

/** The values of each reason that has any. Pressures are in `unit`, rounded to what a reader can use. */
export type ReasonFigures = {
  readonly 'at-or-under-share-of-label': Unit & { readonly percent: number; readonly label: number }
  readonly 'at-or-under-limit': Unit & { readonly limit: number }
  readonly 'hotter-than-others': { readonly degrees: number; readonly temperatureUnit: Units['temperature'] }
  readonly 'fasteners-damaged': { readonly damage: FastenerDamage[] }
  readonly 'tire-damaged': { readonly damage: UnsafeDamage[] }
  readonly 'at-or-under-warning-point': Point
  readonly 'cold-at-or-under-warning-point': Cold & Point
  readonly 'within-hold': Hold
  readonly 'sensor-within-hold': Hold
  readonly 'cold-under-label': Cold
  readonly 'under-label': Unit & { readonly label: number }
  readonly 'cold-above-sidewall-maximum': Sidewall
  readonly 'cold-at-sidewall-maximum': Sidewall
  readonly 'cold-under-mate': Cold
  readonly 'cold-as-other-axle': Cold
  readonly 'lost-since-reading': Unit & {
    readonly drop: number
    readonly days: number
    readonly perDay: number
  }
  readonly 'colder-air-explains': { readonly percent: number }
  readonly 'air-denser-here': Unit & { readonly difference: number }
  readonly 'overnight-at-or-under-warning-point': Point & { readonly predicted: number }
  readonly 'silent-while-others-answered': { readonly tries: number }
  readonly 'vehicle-misses-it-too': { readonly wheel: WheelPosition }
  readonly silent: { readonly tries: number }
  readonly 'vehicle-listens-on': { readonly megahertz: number }
  readonly 'off-by-another-amount': Unit & { readonly offset: number; readonly median: number }
  readonly 'under-gauge': Unit & { readonly offset: number }
  readonly 'same-in-hexadecimal': { readonly id: string }
  readonly 'code-stored': { readonly class: CodeClass }
  /** `text`: the code as the vehicle shows it, typed by whoever read it. */
  readonly 'code-stored-as': { readonly class: CodeClass; readonly text: string }
  readonly 'as-written': { readonly words: string }
}

/** Damage for which a tire must not be driven on. */
export type UnsafeDamage = Extract<TireDamage, 'bulge' | 'cord-showing' | 'cut-to-cord'>

/** The values of a reason: none for most. */
export type ReasonValues<Code extends ReasonCode> = Code extends keyof ReasonFigures
  ? ReasonFigures[Code]
  : Readonly<Record<string, never>>
