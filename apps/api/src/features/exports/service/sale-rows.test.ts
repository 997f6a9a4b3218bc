import { dueCents } from '@bayledger/ledger/questions/money'
import { expect, it } from 'vitest'
import { coveredComeback } from '../../../../../../packages/ledger/test-support/comeback.ts'
import { keptMoney } from '../../../../../../packages/ledger/test-support/money.ts'
import { oneSensorJob } from '../../../../../../packages/ledger/test-support/one-sensor-job.ts'
import { salesOf } from './sale-rows.ts'

const rowsOf = (state: ReturnType<typeof coveredComeback>) => {
  const rows = salesOf(state, keptMoney)
  expect(rows.reduce((sum, { amount }) => sum + (amount ?? 0), 0)).toBe(dueCents(state, keptMoney))
  return rows
}

it('says of each free line of a comeback why it is free and what it would have cost; the amounts stay what was due', () => {
  const rows = rowsOf(coveredComeback())
  const free = rows.filter(({ would_cost }) => would_cost !== null)
  expect(free.find(({ line }) => line.startsWith('Wheel sensor'))).toMatchObject({
    ...{ amount: 0, unit_price: 0, would_cost: 6_800 },
    warranty: expect.stringMatching(/^Covered by our warranty: .* We put in this sensor on order T-2602\./),
  })
  for (const { amount, would_cost, warranty } of free) {
    expect(amount).toBe(0)
    expect(would_cost).toBeGreaterThan(0)
    expect(warranty).not.toBe('')
  }
})

it('says nothing of a warranty where the order is no comeback', () => {
  const rows = rowsOf(oneSensorJob('decided').state())
  expect(rows.length).toBeGreaterThan(2)
  for (const row of rows) expect(row).toMatchObject({ would_cost: null, warranty: '' })
})
