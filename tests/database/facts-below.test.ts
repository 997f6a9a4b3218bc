import { fold } from '@bayledger/ledger/fold'
import { describe, expect, it } from 'vitest'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { programText } from '../support/program-text.ts'

const { orders } = demoShop('2026-01-12T11:40:00-05:00')
const entries = orders.flatMap((order) => order.entries)

describe('what the ledger stores', () => {
  it('holds no sentence that the program made, in any payload of the demo', () => {
    expect(entries.length).toBeGreaterThan(300)
    for (const { kind, payload, given, seq } of entries)
      expect(programText({ payload, given }), `${kind} at ${seq}`).toEqual([])
  })

  it('folds to states without one', () => {
    for (const order of orders) expect(programText(fold(order.entries)), order.number).toEqual([])
  })

  it('would be caught with one', () => {
    expect(programText({ findings: [{ code: 'tire-low', next: 'Find the leak first.' }] })).toEqual([
      'findings.0.next: "Find the leak first."',
    ])
    expect(
      programText({ moves: [{ code: 'wheel-off', wheel: 'LF', since: '2026-01-12T16:40:00.000Z' }] }),
    ).toEqual([])
  })
})
