import type { LightBehavior } from '@bayledger/reckoning/evidence/evidence'

/** What the warning light does, as a sentence's predicate. */
export const lightWords: Readonly<Record<LightBehavior, string>> = {
  off: 'stays off',
  solid: 'stays on',
  'flash-then-solid': 'flashes for about a minute, then stays on',
  'intermittent-cold': 'comes on only on cold mornings',
  'intermittent-other': 'comes and goes',
  'flash-continuous': 'never stops flashing',
}
