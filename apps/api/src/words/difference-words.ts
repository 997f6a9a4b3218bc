import type { Hold, Offer } from '@bayledger/reckoning/diagnosis/diagnosis'

const offers: Readonly<Record<Offer, string>> = {
  sensor: 'sensor',
  'set-of-four': 'sensors in all wheels',
  'service-kit': 'valve stem parts',
  stem: 'valve stem',
  tire: 'tire',
  'fastener-repair': 'studs or nuts',
  reprogram: 'programming a sensor again',
  'sensor-clean': 'cleaning a sensor',
  relearn: 'relearn',
  reset: 'reset',
  'leak-find': 'finding the leak',
  'pressure-set': 'setting pressures',
  'outside-work': 'outside work',
}

const holds: Readonly<Record<Hold, string>> = {
  'wheel-removal': 'taking a wheel off',
  inflation: 'putting air in',
  'bead-break': 'opening the tire',
  'pressure-setting': 'setting pressures',
  relearn: 'the relearn',
  road: 'the road',
  'hand-back': 'the hand-back',
}

/** What staff read where today's rules judge stored evidence otherwise than the findings that were issued. Nothing stores it. */
export const differenceWords = {
  cause: (then: string, now: string) => `The cause was ${then}; today it is ${now}.`,
  noCause: 'not named',
  titled: (title: string) => `“${title}”`,
  onlyThen: (finding: string) => `No longer found today: ${finding}.`,
  onlyNow: (finding: string) => `Found today only: ${finding}.`,
  contradictionOnlyThen: (says: string) => `No longer a contradiction today: ${says}`,
  contradictionOnlyNow: (says: string) => `A contradiction today only: ${says}`,
  unchecked: 'What counts as not checked differs.',
  nextChecks: 'What is worth checking next differs.',
  noWheel: 'no wheel',
  none: 'none',
  changed: (title: string, what: string, then: string, now: string) =>
    `${title}, ${what}: was ${then}; today ${now}.`,
  offers,
  holds,
  reasons: (title: string) => `${title}: the reasons differ, what follows does not.`,
} as const
