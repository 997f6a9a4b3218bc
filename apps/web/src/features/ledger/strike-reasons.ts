import type { PayloadOf } from '@bayledger/ledger/registry'

type StrikeReason = PayloadOf<'entry.struck'>['reason']

/** Reasons that a person gives for withdrawing an entry later; undoing at once needs none. */
export const strikeReasons: readonly {
  readonly value: Exclude<StrikeReason, 'undone'>
  readonly label: string
}[] = [
  { value: 'wrong-wheel', label: 'Recorded at the wrong wheel' },
  { value: 'wrong-value', label: 'Wrong value' },
  { value: 'wrong-order', label: 'Wrong vehicle' },
  { value: 'not-done', label: 'Was not done' },
  { value: 'recorded-twice', label: 'Recorded twice' },
  { value: 'other', label: 'Another reason' },
]

export const strikeWords = (reason: StrikeReason): string =>
  reason === 'undone'
    ? 'undone at once'
    : (strikeReasons.find(({ value }) => value === reason)?.label.toLowerCase() ?? reason)
