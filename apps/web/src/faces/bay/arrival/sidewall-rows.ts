import type { TireRecord } from '@bayledger/ledger/state'
import { type SidewallPrint, UnreadPrint } from '@bayledger/ledger/subjects/arrival/sidewall'
import { Casing } from '@bayledger/reckoning/evidence/evidence'
import { compareSizes, isAsNamed } from '@bayledger/reckoning/tire/compare-sizes'
import { readTin } from '@bayledger/reckoning/tire/read-tin'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { tireSizeText } from '@bayledger/reckoning/tire/tire-size'
import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { capitalized } from '@bayledger/wording/capitalized'
import { tirePrints } from '@bayledger/wording/en/tire-prints'
import { readAgain } from '../../../lib/fault-words.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { dateCodeRow } from './date-code-row.ts'

const optional = 'not looked at'

const whyUnread = UnreadPrint.options.map((value) => ({
  value,
  label: capitalized(tirePrints.unread[value]),
}))

/**
 * What the sidewall of a tire says: its size, its number or the date code alone, and of a light truck what its plies are
 * made of. `sheetSize` is what the sheet names, which one press takes where the tire says the same.
 */
export const sidewallRows = (
  values: RowValues,
  today: CalendarDay,
  { sheetSize, hasPlies }: { readonly sheetSize: string | null; readonly hasPlies: boolean },
): readonly Row[] => [
  {
    kind: 'text',
    key: 'size',
    label: 'Size on the tire',
    optional,
    exact: true,
    ...(sheetSize === null
      ? {}
      : { suggestions: [{ value: sheetSize, label: sheetSize, detail: 'as the sheet has it' }] }),
    hint: sizeHint(values.size, sheetSize),
    fault: (text) => {
      const read = readTireSize(text)
      return read.ok ? undefined : readAgain(read)
    },
  },
  {
    kind: 'choice',
    key: 'sizeUnread',
    label: 'No size to read',
    optional: 'it was read, or not looked for',
    aside: true,
    options: whyUnread,
  },
  dateCodeRow(values.dateCode, today),
  {
    kind: 'text',
    key: 'tin',
    label: 'Whole number after DOT',
    optional,
    aside: true,
    exact: true,
    hint: 'With it, the date code need not be typed.',
    fault: (text) => {
      const read = readTin(text, today)
      return read.ok ? undefined : readAgain(read)
    },
  },
  {
    kind: 'choice',
    key: 'dateUnread',
    label: 'No date code to read',
    optional: 'it was read, or not looked for',
    aside: true,
    options: whyUnread,
  },
  ...(hasPlies
    ? [
        {
          kind: 'choice',
          key: 'casing',
          label: 'Body plies, on the sidewall',
          optional,
          hint: 'Steel plies may break unseen when the tire is driven low.',
          options: [
            { value: 'steel', label: 'Steel' },
            { value: 'polyester', label: 'Polyester' },
          ],
        } as const,
      ]
    : []),
]

const sizeHint = (typed: string | null | undefined, sheetSize: string | null): string => {
  const read = readTireSize(typed ?? '')
  const bySheet = readTireSize(sheetSize ?? '')
  if (!read.ok || !bySheet.ok) return 'With load index and speed symbol, as 215/60R16 95H.'
  return isAsNamed(compareSizes(bySheet.value, read.value))
    ? 'As the sheet has it.'
    : `The sheet has ${sheetSize}. If the tire says otherwise, record what the tire says.`
}

/** What was filled in, as the ledger takes it; nothing is absent that was typed, and nothing is there that was not. */
export const sidewallSeen = (values: RowValues): Pick<TireRecord, 'sizeSeen' | 'dateCodeSeen' | 'casing'> => {
  const size = readTireSize(values.size ?? '')
  const sizeSeen = print(size.ok ? tireSizeText(size.value) : null, values.sizeUnread)
  const dateCodeSeen = print((values.tin || values.dateCode) ?? null, values.dateUnread)
  const casing = Casing.options.find((option) => option === values.casing)
  return {
    ...(sizeSeen ? { sizeSeen } : {}),
    ...(dateCodeSeen ? { dateCodeSeen } : {}),
    ...(casing ? { casing } : {}),
  }
}

const print = (text: string | null, unread: string | null | undefined): SidewallPrint | null => {
  if (text) return { readable: true, text: text.trim().toUpperCase() }
  const why = UnreadPrint.options.find((option) => option === unread)
  return why ? { readable: false, why } : null
}
