import type { SoldItem } from '@bayledger/reckoning/money/sold-items'

/** What a new shop sells by hand, for its owner to change. The words are the shop's own. */
export const firstItems: readonly SoldItem[] = [
  {
    key: 'tire-235-60r18',
    words: 'All-season tire 235/60R18',
    kind: 'tire',
    size: '235/60R18 103H',
    cents: 16_400,
    depositCents: null,
  },
  {
    key: 'tire-225-65r17',
    words: 'All-season tire 225/65R17',
    kind: 'tire',
    size: '225/65R17 102H',
    cents: 14_900,
    depositCents: null,
  },
  {
    key: 'wheel-straightening',
    words: 'Straighten a bent wheel',
    kind: 'outside',
    size: null,
    cents: 12_500,
    depositCents: null,
  },
  {
    key: 'exchange-wheel',
    words: 'Reconditioned wheel, in exchange',
    kind: 'part',
    size: null,
    cents: 18_500,
    depositCents: 6_000,
  },
  {
    key: 'flat-tire-disposal',
    words: 'Disposal of a tire that you brought',
    kind: 'fee',
    size: null,
    cents: 500,
    depositCents: null,
  },
]
