import type { ComebackCause } from '@bayledger/reckoning/money/line-cover'

/** Why a vehicle came back after our work, as the shop's people read it. */
export const comebackCauses: Readonly<Record<ComebackCause, string>> = {
  workmanship: 'Our work',
  'part-failed': 'A part that failed',
  'new-damage': 'New damage',
  'not-found': 'Not found',
  'something-else': 'Something else',
}
