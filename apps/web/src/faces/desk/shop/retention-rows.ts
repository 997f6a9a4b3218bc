import type { RetentionContent } from '@bayledger/contract/retention'
import { figureIn, type RecordRow } from '../../../ui/record/record-rows.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'

const practice = 'Until you write your own: common practice, no source.'

/** For how long what is of people is kept, one row a kind. */
export const retentionRows: readonly RecordRow[] = [
  {
    kind: 'number',
    key: 'customerYears',
    label: 'A customer without an order is erased after',
    unit: 'years',
    hint: `${practice} Empty: never by itself.`,
    low: 1,
    high: 30,
    decimals: 0,
    optional: 'never',
  },
  {
    kind: 'number',
    key: 'reportYears',
    label: 'A sealed report outlives its customer’s erasure for',
    unit: 'years',
    hint: 'California asks repair dealers for three years (16 CCR 3358). Ask what your law says.',
    low: 1,
    high: 30,
    decimals: 0,
  },
  ...(
    [
      ['draftDays', 'A write-up that was begun and left is thrown away after', 1, 365],
      ['messageDays', 'The address of a message is kept for', 30, 3_650],
      ['openingDays', 'When a link was opened is kept for', 7, 3_650],
      ['browserDays', 'A browser that nobody uses, and where a session was, is kept for', 30, 3_650],
      ['refusedDays', 'A refused entry that was settled is kept for', 7, 3_650],
    ] as const
  ).map(
    ([key, label, low, high]): RecordRow => ({
      ...{ kind: 'number', key, label, unit: 'days', hint: practice, low, high, decimals: 0 },
    }),
  ),
]

export const retentionValues = ({ customerYears, ...times }: RetentionContent): RowValues => ({
  customerYears: customerYears === null ? '' : String(customerYears),
  ...Object.fromEntries(Object.entries(times).map(([key, time]) => [key, String(time)])),
})

export const retentionContent = (values: RowValues): RetentionContent => {
  const time = (key: string) => figureIn(values, key) ?? 0
  return {
    customerYears: figureIn(values, 'customerYears'),
    reportYears: time('reportYears'),
    draftDays: time('draftDays'),
    messageDays: time('messageDays'),
    openingDays: time('openingDays'),
    browserDays: time('browserDays'),
    refusedDays: time('refusedDays'),
  }
}
