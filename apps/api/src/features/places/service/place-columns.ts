import type { PlaceContent } from '@bayledger/contract/places'
import {
  type Cell,
  centsCell,
  choiceCell,
  choicesCell,
  dayCell,
  maybe,
  maybeTextCell,
  numberCell,
  textCell,
  wholeNumberCell,
  yesNoCell,
} from '../../../core/csv/cells.ts'
import type { RowOf } from '../../../core/csv/csv-table.ts'
import { registerRowWords } from '../../../words/csv-words.ts'

type Hours = PlaceContent['hours'][number]

/** As 07:30-17:30; empty where it is closed. */
const hours: Cell<Hours> = {
  read: (text) => {
    if (text.trim() === '') return { value: null }
    const found = /^(\d{1,2}:\d\d)\s*[-–]\s*(\d{1,2}:\d\d)$/.exec(text.trim())
    if (found === null) return registerRowWords.noHours
    const [opens = '', closes = ''] = [found[1], found[2]].map((time) => time?.padStart(5, '0'))
    return { value: { opens, closes } }
  },
  write: (value) => (value === null ? '' : `${value.opens}-${value.closes}`),
}

const dollars = () => maybe(centsCell({ fromCents: 0, toCents: 100_000_000 }))

/** What a file of places holds. What the law of a place asks for is information, as its owner confirmed it. */
export const placeColumns = {
  place: textCell(80),
  address: maybeTextCell(200),
  monday: hours,
  tuesday: hours,
  wednesday: hours,
  thursday: hours,
  friday: hours,
  saturday: hours,
  sunday: hours,
  bays: wholeNumberCell({ from: 0, to: 200, unit: 'bays' }),
  altitude_ft: wholeNumberCell({ from: -1_500, to: 20_000, unit: 'ft' }),
  time_zone: textCell(60),
  written_estimate_above: centsCell({ fromCents: 0, toCents: 1_000_000 }),
  overrun: choiceCell(['none', 'percent', 'amount', 'greater-of', 'lesser-of']),
  overrun_percent: maybe(numberCell({ from: 0, to: 100, unit: '%' })),
  overrun_amount: dollars(),
  overrun_at_most: dollars(),
  consent_by: choicesCell(['in-person', 'link', 'telephone']),
  kept_years: wholeNumberCell({ from: 1, to: 100, unit: 'years' }),
  second_person_for_torque: yesNoCell(),
  law_confirmed_on: maybe(dayCell()),
}
export type PlaceRow = RowOf<typeof placeColumns>
