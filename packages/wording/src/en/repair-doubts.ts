import type { RepairUnjudged } from '@bayledger/ledger/questions/puncture'

/** What decides whether a hole may be repaired: what to look at, and what rules a repair out. */
export const repairDoubts: Readonly<Record<RepairUnjudged, { readonly look: string; readonly why: string }>> =
  {
    holes: { look: 'whether the tire has a hole', why: 'the look for holes is still to come' },
    place: { look: 'the place of the hole', why: 'the hole is not in the crown of the tread' },
    width: { look: 'the width of the hole', why: 'the hole is wider than 6 mm (1/4 in)' },
    overlap: { look: 'whether it overlaps an earlier repair', why: 'it overlaps an earlier repair' },
    between: {
      look: 'whether the repair units of its holes would overlap',
      why: 'the repair units of its holes would overlap',
    },
    inside: { look: 'the inside of the tire', why: 'the tire is damaged inside' },
    tread: { look: 'the depth of the tread', why: 'the tread is worn to 2/32 in or less' },
  }
