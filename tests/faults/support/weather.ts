import type { Random } from '../../../packages/reckoning/src/diagnosis/physics/random.test-support.ts'

/**
 * What a network does with one request: `late` comes later; `lost` never reaches the server; `unanswered` and `torn`
 * reach it, and the answer is lost whole or in the middle; `half-open` keeps the connection and does nothing more,
 * before the server took the request or, `taken-half-open`, after; `twice` reaches the server two times; `overtaken` waits
 * until a later request was answered; `portal-page` and `portal-redirect` are the answers of a network that wants a
 * sign-in of its own first.
 */
const fates = [
  'passed',
  'late',
  'lost',
  'unanswered',
  'torn',
  'half-open',
  'taken-half-open',
  'twice',
  'overtaken',
  'portal-page',
  'portal-redirect',
] as const
export type Fate = (typeof fates)[number]

/** How likely each fate is beside the others; a fate that is not named does not happen. */
export type Weather = Readonly<Partial<Record<Fate, number>>>

export const fair: Weather = { passed: 1 }
export const outOfRange: Weather = { lost: 1 }

/** The weathers that a round may meet: each fault alone with requests that pass, and all of them together. */
export const weathers: Readonly<Record<string, Weather>> = {
  fair,
  'out of range': outOfRange,
  slow: { late: 4, passed: 1 },
  'answers lost': { unanswered: 2, torn: 1, passed: 2 },
  'half-open': { 'half-open': 1, 'taken-half-open': 1, passed: 3 },
  'twice and out of order': { twice: 2, overtaken: 2, late: 1, passed: 2 },
  'captive portal': { 'portal-page': 2, 'portal-redirect': 1, passed: 1 },
  storm: Object.fromEntries(fates.map((fate) => [fate, 1])),
}

export const drawFate = (weather: Weather, random: Random): Fate => {
  const shares = fates.map((fate) => [fate, weather[fate] ?? 0] as const)
  let left = random.between(
    0,
    shares.reduce((sum, [, share]) => sum + share, 0),
  )
  for (const [fate, share] of shares) {
    left -= share
    if (share > 0 && left < 0) return fate
  }
  return 'passed'
}
