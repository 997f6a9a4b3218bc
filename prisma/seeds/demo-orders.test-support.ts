import { stateOf } from '@bayledger/ledger/append'
import { estimateMoney } from '@bayledger/ledger/questions/money'
import { roadPositions } from '@bayledger/reckoning/wheels'
import type { DemoOrder } from './demo/written-order.ts'
import { demoShop } from './demo-shop.ts'

const demoNow = '2026-01-12T11:40:00-05:00'
export const shop = demoShop(demoNow)

export const everyOrder = [...shop.earlier, ...shop.orders]
export const order = (number: string): DemoOrder => {
  const found = everyOrder.find((candidate) => candidate.number === number)
  if (!found) throw new Error(`no order ${number}`)
  return found
}
export const state = (number: string) => stateOf(order(number).entries, shop.shop.id, order(number).orderId)
export const priced = (number: string) =>
  estimateMoney(order(number).money, state(number).estimates.at(-1)?.scope.money)?.totals.totalCents
export const findings = (number: string) =>
  state(number).diagnosis?.diagnosis.findings.map(({ code, wheels }) => `${code}@${wheels.join('+')}`)
export const all = 'LF+RF+RR+LR'
// Pressure of the standard atmosphere at 820 ft: US Standard Atmosphere 1976, constants from memory.
export const local = 14.696 * (1 - 6.8756e-6 * 820) ** 5.2559
export const shifted = (psi: number, from: number, to: number) =>
  ((psi + local) * (to + 459.67)) / (from + 459.67) - local
export const gauges = (number: string) =>
  roadPositions.map((wheel) => state(number).arrival.wheels[wheel]?.gauge?.pressure.value)
