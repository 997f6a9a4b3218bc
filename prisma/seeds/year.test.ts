import { stateOf } from '@bayledger/ledger/append'
import { digestOf } from '@bayledger/ledger/digests'
import { verifyChain } from '@bayledger/ledger/hash-chain'
import { handBackGate, sealGate } from '@bayledger/ledger/questions/gates'
import { owedCents } from '@bayledger/ledger/questions/money'
import { roadPositions } from '@bayledger/reckoning/wheels'
import { describe, expect, it } from 'vitest'
import { demoCalendar } from './demo/calendar.ts'
import { shopId } from './demo/places.ts'
import { demoShop } from './demo-shop.ts'
import { type YearOrder, yearOfOrders, yearOrders } from './year.ts'

const calendar = demoCalendar('2026-01-12T11:40:00-05:00')
const orders: readonly YearOrder[] = [...yearOfOrders(calendar)]
const stateOfOrder = ({ entries, orderId }: YearOrder) => stateOf(entries, shopId, orderId)
const states = orders.map(stateOfOrder)
const openedAt = (order: YearOrder): string => order.entries[0]?.writtenAt ?? ''

describe('the year before the demo’s day', () => {
  it('has 200 orders, numbered as they were opened, with those that the demo’s day rests on, up to its first', () => {
    const { earlier } = demoShop('2026-01-12T11:40:00-05:00')
    const numbered = [...earlier.slice(1), ...orders].map(({ number }) => number)
    expect(numbered.toSorted()).toEqual(
      Array.from({ length: yearOrders + 3 }, (_, index) => `T-${2_398 + index}`),
    )
    const all = [...earlier, ...orders].toSorted((one, other) => one.number.localeCompare(other.number))
    const dayOfOpening = all.map(({ entries }) => entries[0]?.writtenAt.slice(0, 10) ?? '')
    expect(dayOfOpening).toEqual(dayOfOpening.toSorted())
    for (const { end } of orders) expect((end?.handBack.receivedAt ?? '') < calendar.at('07:00')).toBe(true)
  })

  it('is the same at every run', () => {
    const again: YearOrder[] = []
    for (const order of yearOfOrders(calendar)) if (again.push(order) === 10) break
    expect(digestOf(again.map(({ entries }) => entries))).toBe(
      digestOf(orders.slice(0, 10).map(({ entries }) => entries)),
    )
  })

  it('was admitted entry by entry, verifies, and may be sealed, paid and handed back', () => {
    for (const [index, order] of orders.entries()) {
      const state = states[index]
      if (!state) throw new Error(order.number)
      expect(verifyChain(order.entries), order.number).toEqual({ whole: true })
      expect([order.number, ...sealGate(state), ...handBackGate(state)]).toEqual([order.number])
      expect([order.number, owedCents(state, order.money)]).toEqual([order.number, 0])
    }
  })

  it('lets no odometer run backwards, within a visit or from one to the next', () => {
    const last = new Map<string, number>()
    for (const [index, order] of orders.entries()) {
      const { opened, drives } = states[index] ?? {}
      const readings = [
        opened?.odometer?.value ?? 0,
        ...(drives ?? []).flatMap(({ odometerOut, odometerIn }) => [odometerOut.value, odometerIn.value]),
      ]
      for (const miles of readings) {
        expect(miles).toBeGreaterThanOrEqual(last.get(order.vehicle.id) ?? 0)
        last.set(order.vehicle.id, miles)
      }
    }
    expect(last.size).toBeLessThan(yearOrders)
  })

  it('follows the gas law from one visit to the next: a tire set here comes back with what it held, less what it seeps', () => {
    // The standard atmosphere at 820 ft (US Standard Atmosphere 1976), written out here and not taken from reckoning.
    const open = 14.696 * (1 - 6.8756e-6 * 820) ** 5.2559
    const left = new Map<string, { psi: number; fahrenheit: number; at: string }>()
    let compared = 0
    for (const [index, order] of orders.entries()) {
      const state = states[index]
      const outdoor = state?.surroundings?.surroundings.outdoor.value ?? Number.NaN
      for (const wheel of roadPositions) {
        const key = `${order.vehicle.id}/${wheel}`
        const before = left.get(key)
        const gauge = state?.arrival.wheels[wheel]?.gauge?.pressure.value
        const isMoved = (state?.arrival.tires[wheel]?.tireDamage ?? []).length > 0
        if (before && gauge !== undefined && !isMoved && state?.arrival.tires[wheel]?.stem === 'sound') {
          const kept = ((before.psi + open) * (outdoor + 459.67)) / (before.fahrenheit + 459.67) - open
          const days = (Date.parse(openedAt(order)) - Date.parse(before.at)) / 86_400_000
          expect(kept - gauge).toBeGreaterThan(-0.2)
          expect(kept - gauge).toBeLessThan(0.3 + 0.05 * days)
          compared += 1
        }
        const set = state?.work[wheel]?.pressure
        if (set)
          left.set(key, {
            psi: set.asLeft.value,
            fahrenheit: set.surroundings.tire?.value ?? Number.NaN,
            at: openedAt(order),
          })
      }
    }
    expect(compared).toBeGreaterThan(40)
  })

  it('has sensors that fail by age, but for one lot, and comebacks that name their order', () => {
    const silent = states.flatMap(({ arrival, opened }) =>
      roadPositions
        .filter((wheel) => arrival.wheels[wheel]?.sensor?.reading.answer === 'silent')
        .map((wheel) => ({
          months: arrival.tires[wheel]?.sensorAgeMonths ?? 0,
          comeback: opened?.comebackOf !== null,
        })),
    )
    expect(silent.length).toBeGreaterThan(25)
    expect(silent.filter(({ comeback }) => comeback).length).toBeGreaterThanOrEqual(3)
    for (const { months, comeback } of silent) expect(comeback ? months < 24 : months >= 72).toBe(true)
    const before = new Set<string>()
    let comebacks = 0
    for (const [index, { orderId }] of orders.entries()) {
      const from = states[index]?.opened?.comebackOf ?? null
      if (from !== null) {
        comebacks += 1
        expect(before.has(from)).toBe(true)
      }
      before.add(orderId)
    }
    expect(comebacks).toBeGreaterThanOrEqual(3)
  })

  it('has every trade of the shop: consents and refusals, by desk and telephone, and every usual bundle', () => {
    const titles = new Set(
      states.flatMap((state) => state.estimates.at(-1)?.scope.bundles.map(({ title }) => title) ?? []),
    )
    for (const title of [
      'sensor',
      'set-of-four',
      'leak-search',
      'puncture',
      'tires',
      'season',
      'rotation',
    ] as const)
      expect(titles).toContain(title)
    for (const title of ['torque-again', 'pressures', 'reset', 'relearn', 'outside-work'] as const)
      expect(titles).toContain(title)
    const answers = states.flatMap((state) => Object.values(state.answers).map(({ answer }) => answer))
    expect(new Set(answers)).toEqual(new Set(['authorized', 'declined', 'deferred']))
  })
})
