import { type DemoCalendar, onDay } from './calendar.ts'
import { writeT1187 } from './earlier/t-1187.ts'
import { writeT2594 } from './earlier/t-2594.ts'
import { writeT2596 } from './earlier/t-2596.ts'
import { writeT2600 } from './earlier/t-2600.ts'
import type { DemoEnd } from './hand-back.ts'
import type { DemoInstrument } from './instruments.ts'
import { type OrderPen, orderPen } from './order-pen.ts'
import { type DemoOrder, whenLookedAt, writtenBy } from './written-order.ts'

/** When each was opened; its number is the next of that day. */
const days = {
  'T-1187': ['2024-10-22', writeT1187],
  'T-2594': ['2025-12-31', writeT2594],
  'T-2596': ['2026-01-03', writeT2596],
  'T-2600': ['2026-01-09', writeT2600],
} as const satisfies Readonly<Record<string, readonly [string, (pen: OrderPen) => DemoEnd | undefined]>>

export type EarlierNumber = keyof typeof days
export const earlierNumbers = Object.keys(days) as EarlierNumber[]

/** Finished orders of earlier days without which orders of the demo's day would not be what they are, oldest first. */
export const earlierOrders = (
  calendar: DemoCalendar,
  instruments: readonly DemoInstrument[],
): readonly DemoOrder[] =>
  earlierNumbers.map((number) =>
    whenLookedAt(number, () => {
      const [day, write] = days[number]
      const pen = orderPen(number, onDay(calendar, day), instruments)
      return writtenBy(pen, [], write(pen) ?? null)
    }),
  )
