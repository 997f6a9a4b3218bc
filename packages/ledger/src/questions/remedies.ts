import type { FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Work } from '@bayledger/reckoning/estimate'
import type { FoundKind } from '../state.ts'

/** What puts a trouble right: another tire, repaired fasteners, another part, or whatever is decided with the customer. */
export type Remedy = 'tire' | 'fastener' | 'part' | 'decision'

const remedies: Readonly<Record<FoundKind, Remedy>> = {
  stud: 'fastener',
  seat: 'fastener',
  thread: 'fastener',
  cut: 'tire',
  'run-low-inside': 'tire',
  cord: 'tire',
  separation: 'tire',
  bulge: 'tire',
  seized: 'decision',
  silent: 'part',
  'wrong-part': 'part',
  other: 'decision',
}

export const remedyOf = (what: FoundKind): Remedy => remedies[what]

/** The work that an authorized bundle must hold for a wheel, where nothing else puts it right. */
export const remedyWork = {
  tire: 'fit-tire',
  fastener: 'repair-fastener',
} as const satisfies Readonly<Partial<Record<Remedy, Work['kind']>>>

/** The finding that the changed evidence raises, which a customer may refuse on record; other troubles raise none. */
export const refusableFinding = {
  tire: 'tire-unsafe',
  fastener: 'wheel-not-secure',
} as const satisfies Readonly<Partial<Record<Remedy, FindingCode>>>
