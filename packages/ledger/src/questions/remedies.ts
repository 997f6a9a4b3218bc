import type { FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Work } from '@bayledger/reckoning/estimate'
import type { FoundKind } from '../state.ts'

/** What puts a trouble right: another tire, a repaired hole or fasteners, another part, or what is decided with the customer. */
export type Remedy = 'tire' | 'hole' | 'fastener' | 'part' | 'decision'

const remedies: Readonly<Record<FoundKind, Remedy>> = {
  stud: 'fastener',
  seat: 'fastener',
  thread: 'fastener',
  cut: 'tire',
  'run-low-inside': 'tire',
  cord: 'tire',
  separation: 'tire',
  bulge: 'tire',
  hole: 'hole',
  'hole-beyond-repair': 'tire',
  seized: 'decision',
  silent: 'part',
  'wrong-part': 'part',
  other: 'decision',
}

export const remedyOf = (what: FoundKind): Remedy => remedies[what]

/** The work that an authorized bundle must hold for a wheel, where nothing else puts it right. */
export const remedyWork = {
  tire: 'fit-tire',
  hole: 'repair-puncture',
  fastener: 'repair-fastener',
} as const satisfies Readonly<Partial<Record<Remedy, Work['kind']>>>

/** The finding that the changed evidence raises, which a customer may refuse on record; `null`: it raises none. */
export const refusableFinding = (what: FoundKind): FindingCode | null => {
  if (what === 'hole-beyond-repair') return 'puncture-not-repairable'
  switch (remedyOf(what)) {
    case 'tire':
      return 'tire-unsafe'
    case 'hole':
      return 'puncture-found'
    case 'fastener':
      return 'wheel-not-secure'
    default:
      return null
  }
}
