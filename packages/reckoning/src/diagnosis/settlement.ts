import type { FindingCode } from './finding-codes.ts'

/** What settles a finding on a wheel before anything is read again. */
export type Settlement =
  /** The tire was looked at from inside and is sound. */
  | 'inside-sound'
  /** The customer was told of the danger. */
  | 'told'
  /** The figures of the door label were confirmed. */
  | 'label-confirmed'

/** The findings that have a settlement of their own; the gates of the others open when the work is done. */
export const settledBy: Readonly<Partial<Record<FindingCode, Settlement>>> = {
  'run-low-damage-possible': 'inside-sound',
  'sealant-inside': 'told',
  'placard-unverified': 'label-confirmed',
}
