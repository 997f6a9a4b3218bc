import type { PayloadOf } from '@bayledger/ledger/registry'
import { tiresOf } from '@bayledger/reckoning/sheet'
import { sundayOfWeek, weeksOfYear } from '@bayledger/reckoning/tire/build-week'
import { dateCodeText } from '@bayledger/reckoning/tire/date-code-text'
import { axleOf, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { DemoCalendar } from './calendar.ts'
import type { OrderPen } from './order-pen.ts'

/** What a technician reads on a sidewall: the size of the sheet, and the date code of the week before a day of the demo's calendar. */
export const sidewallSeen = (
  pen: OrderPen,
  wheel: WheelPosition,
  madeOn: string,
): Pick<PayloadOf<'tire.inspected'>, 'sizeSeen' | 'dateCodeSeen'> => {
  const size = tiresOf(pen.state().sheet?.sheet)?.[axleOf(wheel)]?.size
  return {
    ...(size === undefined ? {} : { sizeSeen: { readable: true, text: size } }),
    dateCodeSeen: { readable: true, text: dateCodeOf(pen.calendar, madeOn) },
  }
}

/** Made in mid-July, so that the tire has these full years in January, whichever day plays the demo's. */
export const julyOf = (ageYears: number): string => `${2025 - ageYears}-07-15`

const dateCodeOf = (calendar: DemoCalendar, madeOn: string): string => {
  const made = calendar.on(madeOn)
  const year = Number(made.slice(0, 4))
  // The first days of a year belong to the last week of the year before.
  const week = [year - 1, year]
    .flatMap((one) =>
      Array.from({ length: weeksOfYear(one) }, (_, index) => ({ year: one, week: index + 1 })),
    )
    .findLast((one) => sundayOfWeek(one) <= made)
  return week === undefined ? '' : dateCodeText({ ...week, decadeKnown: true })
}
