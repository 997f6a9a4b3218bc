import { randomUUID } from 'node:crypto'
import type { Entry } from '@bayledger/ledger/entry'
import { fold } from '@bayledger/ledger/fold'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { benchDiagnosis } from './diagnosis-bench.ts'
import { interleave } from './interleave.ts'
import type { Line } from './table.ts'

const ledgerLength = 220

/** Diagnosis and the fold of a ledger, in this process, against reading the same values from JSON. */
export const benchReckoning = async (): Promise<Line[]> => {
  const diagnosis = await benchDiagnosis()
  const entries = longLedger()
  const ledgerText = JSON.stringify(entries)
  const folding = await interleave(
    () => fold(entries),
    () => JSON.parse(ledgerText),
    { blocks: 20, block: 20, seconds: 6 },
  )
  const common = { name: null, against: 'JSON.parse of the same', of: 'p50', goal: null } as const
  return [...diagnosis, { ...common, what: `fold of ${ledgerLength} entries`, ...folding }]
}

/** The demo's longest order, made longer with wheel readings of its own. */
const longLedger = (): Entry[] => {
  const longest = demoShop('2026-01-12T16:40:00.000Z')
    .orders.map(({ entries }) => entries)
    .toSorted((a, b) => b.length - a.length)[0]
  if (!longest) throw new Error('the demo has no orders')
  const readings = longest.filter(({ kind }) => kind === 'wheel.checked')
  const more = Array.from({ length: Math.max(0, ledgerLength - longest.length) }, (_, index) => {
    const reading = readings[index % readings.length]
    if (!reading) throw new Error('the longest order has no readings')
    return { ...reading, id: randomUUID(), seq: longest.length + index + 1 }
  })
  return [...longest, ...more].slice(0, ledgerLength)
}
