import { readDateCode } from '@bayledger/reckoning/tire/read-date-code'
import { readTin, type Tin } from '@bayledger/reckoning/tire/read-tin'
import { type CalendarDay, dayNumber, dayOfNumber } from '@bayledger/reckoning/units/calendar-day'
import * as z from 'zod/mini'
import { plainText } from '../../text.ts'

/** Why nobody could read what a sidewall should say. */
export const UnreadPrint = z.enum(['worn-off', 'on-the-inner-side', 'covered', 'not-printed'])
export type UnreadPrint = z.infer<typeof UnreadPrint>

/** What a sidewall says, as a person read it, or why nobody could read it. */
export const SidewallPrint = z.discriminatedUnion('readable', [
  z.strictObject({ readable: z.literal(true), text: plainText(40) }),
  z.strictObject({ readable: z.literal(false), why: UnreadPrint }),
])
export type SidewallPrint = z.infer<typeof SidewallPrint>

/** When a tire was made, from its whole number or from its last digits alone; `null`: the text is neither. */
export const readMade = (typed: string, inspectedOn: CalendarDay): Tin['made'] | null => {
  const code = readDateCode(typed, inspectedOn)
  if (code.ok) return code.value
  const tin = readTin(typed, inspectedOn)
  return tin.ok ? tin.value.made : null
}

/** The latest day that it can be anywhere when an instant is noted in UTC: no tire is refused as made tomorrow. */
export const latestDayAt = (instant: string): CalendarDay =>
  dayOfNumber(dayNumber(instant.slice(0, 10) as CalendarDay) + 1)
