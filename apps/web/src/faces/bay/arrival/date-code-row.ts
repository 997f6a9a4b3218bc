import { readDateCode } from '@bayledger/reckoning/tire/read-date-code'
import { type TireAge, tireAge } from '@bayledger/reckoning/tire/tire-age'
import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { tirePrints } from '@bayledger/wording/en/tire-prints'
import { dateCodeFaults, readAgain } from '../../../lib/fault-words.ts'
import type { Row } from '../form/rows.ts'

type Typed = string | null | undefined

/** The date code as printed on the tire, with the age that it means. */
export const dateCodeRow = (typed: Typed, today: CalendarDay): Row => {
  const age = ageBy(typed, today)
  return {
    kind: 'number',
    key: 'dateCode',
    label: 'Tire date code',
    optional: 'not looked at',
    unit: '',
    hint: hintFor(age),
    low: 0,
    high: 9_999,
    step: null,
    limits: { whole: 4, decimals: 0, leadingZeros: true },
    fault: (text) => {
      if (text.length < 3) return dateCodeFaults.short
      const read = readDateCode(text, today)
      return read.ok ? undefined : `${read.found}. ${readAgain(read)}`
    },
  }
}

const hintFor = (age: TireAge | null): string =>
  age === null ? 'The last digits of the number after DOT, as 2620.' : `Age: ${tirePrints.age(age)}.`

/** Full years, at least so many where the code names no decade; `null` where no code was typed. */
export const yearsByDateCode = (typed: Typed, today: CalendarDay): number | null =>
  ageBy(typed, today)?.fullYears ?? null

const ageBy = (typed: Typed, today: CalendarDay): TireAge | null => {
  const read = readDateCode(typed ?? '', today)
  return read.ok ? tireAge(read.value, today) : null
}
