import type { WrenchUsed } from '@bayledger/ledger/subjects/torque/kinds'
import { type DemoCalendar, onDay } from './demo/calendar.ts'
import type { DemoCustomer, DemoVehicle } from './demo/customers.ts'
import { earlierNumbers } from './demo/earlier.ts'
import { type DemoInstrument, instruments } from './demo/instruments.ts'
import { orderPen } from './demo/order-pen.ts'
import { people } from './demo/people.ts'
import { demoId } from './demo/seeded.ts'
import type { DemoOrder } from './demo/written-order.ts'
import { type Car, carOf } from './year/car.ts'
import { type Chance, chanceOf } from './year/chance.ts'
import { type StoryKind, storyFor, tell } from './year/story.ts'
import { writeVisit } from './year/visit.ts'
import { dayNumberOf, dayOf } from './year/weather.ts'

/** How many orders the shop finished in the year before the demo's day. */
export const yearOrders = 200

/** One finished order of the year, with whoever brought the vehicle. */
export type YearOrder = DemoOrder & {
  readonly customer: DemoCustomer
  readonly vehicle: DemoVehicle
}

const firstDay = dayNumberOf('2025-01-13')
const lastDay = dayNumberOf('2026-01-07')

/** Their numbers, in the order in which they were opened. Three numbers between them belong to orders on which the demo's day rests. */
const numbers: readonly string[] = Array.from(
  { length: yearOrders + 3 },
  (_, index) => `T-${2_398 + index}`,
).filter((number) => !(earlierNumbers as readonly string[]).includes(number))

/** The orders of the year, in the order in which they were opened. */
export const yearOrderIds: readonly string[] = numbers.map((number) => demoId(`order/${number}`))

/** The wrenches of the year, each until its calibration ran out; they are in the register and no longer in use. */
export const yearWrenches = (calendar: DemoCalendar): readonly DemoInstrument[] =>
  (
    [
      ['W-01', '2025-06-02'],
      ['W-02', '2025-10-06'],
      ['W-04', '2026-01-12'],
    ] as const
  ).map(([code, dueOn]) => ({
    id: demoId(`instrument/${code}`),
    kind: 'wrench',
    code,
    body: { rangeLow: 30, rangeHigh: 250, rangeUnit: 'lbf·ft', accuracyPercent: 4 },
    dueOn: calendar.on(dueOn),
    cycles: 0,
    quarantined: false,
  }))

/** Sensors by the quarter in which they came; of the second, many fail within months. */
const lots = [
  { from: '2025-01-01', code: 'G1187', madeMonth: '2024-09', earlyFailures: 0.04 },
  { from: '2025-04-01', code: 'H2207', madeMonth: '2025-01', earlyFailures: 0.85 },
  { from: '2025-07-01', code: 'J0419', madeMonth: '2025-04', earlyFailures: 0.04 },
  { from: '2025-10-01', code: 'J5530', madeMonth: '2025-07', earlyFailures: 0.04 },
] as const

const technicians = [
  { person: people.rufus, tablet: 1, pace: 1 },
  { person: people.bo, tablet: 2, pace: 1.12 },
  { person: people.ines, tablet: 4, pace: 0.9 },
] as const

type Return = { readonly car: Car; readonly due: number; readonly kind: StoryKind }

/**
 * The year before the demo's day, order by order in the order in which they were opened: 200 finished orders, the same at every
 * run, each written through the ledger's own `admit`. Temperatures follow the season, pressures the gas law, odometers
 * and tread the miles; sensors fail by age, and one lot early.
 */
export function* yearOfOrders(calendar: DemoCalendar): Generator<YearOrder> {
  const chance = chanceOf('tamber-street/year')
  const register = [...instruments(calendar), ...yearWrenches(calendar)]
  const clicks = new Map<string, number>()
  const cars: Car[] = []
  let returns: Return[] = []
  for (const [index, day] of visitDays(chance).entries()) {
    const own = chanceOf(`tamber-street/year/${index}`)
    const due = returns.find((one) => one.due <= day && (one.car.last?.day ?? 0) < day)
    returns = returns.filter((one) => one !== due)
    const known = due?.car ?? (own.isOf(0.2) ? seenBefore(cars, day, own) : null)
    const car = known ?? carOf(own, cars.length, day)
    if (!cars.includes(car)) cars.push(car)
    const story = due ? tell(due.kind, car, own) : storyFor(car, day, own)
    const lot = lots.findLast(({ from }) => dayNumberOf(from) <= day) ?? lots[0]
    const number = numbers[index] ?? ''
    const pen = orderPen(number, onDay(calendar, dayOf(day)), register, {
      visits: car.visits,
      idsOnOtherVehicles: [],
    })
    const end = writeVisit({
      pen,
      car,
      story,
      day,
      chance: own,
      technician: technicians[index % 3] ?? technicians[0],
      advisor: index % 5 < 3 ? people.ottoline : people.devin,
      lot,
      wrench: () => usedWrench(register, calendar, day, clicks),
    })
    returns.push(...comesAgain(car, pen.state().work, day, own, lot.earlyFailures))
    yield {
      number,
      after: null,
      orderId: pen.orderId,
      lines: pen.lines(),
      entries: pen.entries(),
      money: pen.moneySides(),
      links: [],
      photos: pen.photos(),
      end,
      customer: car.customer,
      vehicle: car.visitor.vehicle,
    }
  }
}

/** More come in the cold months; Sundays are free. */
const visitDays = (chance: Chance): number[] => {
  const days: number[] = []
  while (days.length < yearOrders) {
    const day = chance.whole(firstDay, lastDay)
    const fromColdest = Math.abs(((day - dayNumberOf('2025-01-20') + 182) % 365) - 182) / 182
    if (new Date(day * 86_400_000).getUTCDay() !== 0 && chance.isOf(1 - 0.55 * fromColdest)) days.push(day)
  }
  return days.sort((one, other) => one - other)
}

const seenBefore = (cars: readonly Car[], day: number, chance: Chance): Car | null => {
  const rested = cars.filter(({ last }) => last !== null && day - last.day > 45)
  const [first, ...others] = rested
  return first ? chance.pick([first, ...others]) : null
}

/** A wheel that was off is looked at again after some miles; a sensor of the bad lot fails; now and then a relearn does not hold. */
const comesAgain = (
  car: Car,
  work: Readonly<Partial<Record<string, { readonly fitted: unknown }>>>,
  day: number,
  chance: Chance,
  earlyFailures: number,
): Return[] => {
  const fitted = Object.values(work).some((one) => one?.fitted)
  const off = car.last?.off ?? []
  return [
    ...(fitted && chance.isOf(0.12)
      ? [{ car, due: day + chance.whole(2, 12), kind: 'lost-relearn' as const }]
      : off.length > 0 && chance.isOf(0.2)
        ? [{ car, due: day + chance.whole(2, 6), kind: 'torque-again' as const }]
        : []),
    ...(fitted && chance.isOf(earlyFailures)
      ? [{ car, due: day + chance.whole(60, 150), kind: 'early-failure' as const }]
      : []),
  ]
}

const usedWrench = (
  register: readonly DemoInstrument[],
  calendar: DemoCalendar,
  day: number,
  clicks: Map<string, number>,
): WrenchUsed => {
  const today = calendar.on(dayOf(day))
  const wrench = yearWrenches(calendar).find(({ dueOn }) => (dueOn ?? '') > today) ?? register[0]
  if (!wrench) throw new RangeError('there is no wrench')
  const cyclesBefore = clicks.get(wrench.id) ?? 0
  clicks.set(wrench.id, cyclesBefore + 5)
  return {
    instrumentId: wrench.id,
    code: wrench.code,
    dueOn: wrench.dueOn ?? '',
    cyclesBefore,
    rangeLow: 30,
    rangeHigh: 250,
    rangeUnit: 'lbf·ft',
  }
}
