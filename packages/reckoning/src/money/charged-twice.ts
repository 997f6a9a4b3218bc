import type { EstimateLine, LineCode, PricedBundle } from '../estimate.ts'
import { inReadingOrder, type WheelPosition } from '../wheels.ts'
import { isConditional } from './added-bundles.ts'

/** What is done or fitted once, however many bundles charge for it. */
export type DoneOnce = 'tire-off' | 'stem-parts' | 'learning'

/** `wheels`: none where it concerns the vehicle. */
export type ChargedTwice = {
  readonly what: DoneOnce
  readonly wheels: readonly WheelPosition[]
  readonly bundleKeys: readonly string[]
}

/** Stem parts come with a sensor, and the search for a leak takes the tire off. */
const chargedBy: Readonly<Record<DoneOnce, readonly LineCode[]>> = {
  'tire-off': ['wheel-service', 'wheel-service-low', 'repair-labor', 'leak-search'],
  'stem-parts': ['sensor', 'kit-clamp-in', 'kit-rubber'],
  learning: ['program-and-relearn', 'relearn', 'reset'],
}

/**
 * What a customer would pay for twice who says Yes to several bundles: a tire taken off, the stem's parts, what the vehicle
 * has to learn. Bundles of which only one can be chosen are not compared, and nothing is owed of one for a case that may not
 * come.
 *
 * @source This program's own rule.
 */
export const chargedTwice = (bundles: readonly PricedBundle[]): ChargedTwice[] => {
  const owed = bundles.filter((bundle) => !isConditional(bundle))
  return (Object.keys(chargedBy) as DoneOnce[]).flatMap((what): ChargedTwice[] => {
    const charges = owed.flatMap((bundle) => {
      const lines = bundle.money.lines.filter((line) => isCharge(line, what))
      return lines.length === 0 ? [] : [{ bundle, wheels: new Set(lines.flatMap(({ wheels }) => wheels)) }]
    })
    const pairs = charges.flatMap((one, at) =>
      charges.slice(at + 1).flatMap((other) => {
        if (excludes(one.bundle, other.bundle)) return []
        const wheels = [...one.wheels].filter((wheel) => other.wheels.has(wheel))
        return what === 'learning' || wheels.length > 0 ? [{ keys: [one, other], wheels }] : []
      }),
    )
    if (pairs.length === 0) return []
    const keys = new Set(pairs.flatMap((pair) => pair.keys.map(({ bundle }) => bundle.bundleKey)))
    return [
      {
        what,
        wheels: what === 'learning' ? [] : inReadingOrder(pairs.flatMap(({ wheels }) => wheels)),
        bundleKeys: owed.map(({ bundleKey }) => bundleKey).filter((key) => keys.has(key)),
      },
    ]
  })
}

const isCharge = ({ code, amountCents }: EstimateLine, what: DoneOnce): boolean =>
  code !== null && amountCents > 0 && chargedBy[what].includes(code)

/** Whether only one of two bundles can be chosen. */
const excludes = (one: PricedBundle, other: PricedBundle): boolean =>
  one.alternativeTo === other.bundleKey ||
  other.alternativeTo === one.bundleKey ||
  (one.alternativeTo !== null && one.alternativeTo === other.alternativeTo)
