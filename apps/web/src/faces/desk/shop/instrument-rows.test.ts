import { describe, expect, it } from 'vitest'
import { recordFaultsOf } from '../../../ui/record/record-rows.ts'
import {
  instrumentContent,
  instrumentLine,
  instrumentNeeds,
  instrumentRows,
  instrumentValues,
  type KeptInstrument,
} from './instrument-rows.ts'

const place = '3f1c7a52-0d1e-4c55-9b6e-6c1f0b7d2a01'
const rows = instrumentRows([{ value: place, label: 'Tamber Street' }])
const shared = { code: 'W-07', locationId: place, quarantined: false, why: null }
const wrench = {
  kind: 'wrench',
  ...shared,
  rangeLow: 30,
  rangeHigh: 250,
  rangeUnit: 'lbf·ft',
  accuracyPercent: 4,
  calibratedOn: '2025-06-15',
  dueOn: '2026-06-15',
  certificate: 'C-1188',
} as const
const gauge = {
  kind: 'gauge',
  ...shared,
  code: 'GA-1',
  offsetPsi: -0.2,
  checkedOn: null,
  dueOn: null,
} as const
const kept = (content: KeptInstrument['content'], cycles: number | null = null): KeptInstrument => ({
  id: place,
  version: 1,
  content,
  facts: { cycles },
})

describe('a wrench or gauge as rows', () => {
  it.each([
    [wrench],
    [{ ...wrench, accuracyPercent: null, calibratedOn: null, certificate: null }],
    [{ ...wrench, quarantined: true, why: 'Dropped on the floor.' }],
    [gauge],
    [{ ...gauge, checkedOn: '2026-01-05', dueOn: '2026-01-19' }],
  ])('comes back as it was: %o', (content) => {
    const values = instrumentValues(content)
    expect(recordFaultsOf(rows(values), values)).toEqual({})
    expect(instrumentContent(values)).toEqual(content)
  })

  it('names what is missing and what cannot be at its row', () => {
    const values = { ...instrumentValues(wrench), rangeLow: '-30', dueOn: '', code: ' ' }
    expect(Object.keys(recordFaultsOf(rows(values), values))).toEqual(['code', 'rangeLow', 'dueOn'])
    const aside = { ...instrumentValues(gauge), quarantined: 'yes' }
    expect(Object.keys(recordFaultsOf(rows(aside), aside))).toEqual(['why'])
  })
})

describe('what a list says of a wrench or gauge', () => {
  it.each([
    [kept(wrench, 1_220), '2026-01-12', '30 to 250 lbf·ft · calibration due 2026-06-15 · 3,780 clicks left'],
    [kept(wrench, 1_220), '2026-06-15', '30 to 250 lbf·ft · calibration ends today · 3,780 clicks left'],
    [
      kept(wrench, 5_000),
      '2026-06-16',
      '30 to 250 lbf·ft · calibration overdue since 2026-06-15 · its clicks are spent',
    ],
    [kept({ ...gauge, quarantined: true }), '2026-01-12', '−0.2 psi against the master · in quarantine'],
    [
      kept({ ...gauge, offsetPsi: 0, dueOn: '2026-01-19' }),
      '2026-01-12',
      'agrees with the master · check due 2026-01-19',
    ],
  ])('%#: its range, its calibration and its clicks', (one, today, line) => {
    expect(instrumentLine(one, today)).toBe(line)
  })

  it('names what is overdue or spent, and what is due within a week, its last day included', () => {
    const due = (code: string, dueOn: string, cycles = 0) => kept({ ...wrench, code, dueOn }, cycles)
    const all = [
      due('W-1', '2026-01-11'),
      due('W-2', '2026-01-12'),
      due('W-3', '2026-01-19'),
      due('W-4', '2026-01-20'),
      due('W-5', '2026-06-01', 5_000),
      kept({ ...wrench, code: 'W-6', dueOn: '2026-01-01', quarantined: true }),
      kept(gauge),
    ]
    expect(instrumentNeeds(all, '2026-01-12')).toBe('overdue: W-1, W-5; due within a week: W-2, W-3')
    expect(instrumentNeeds([kept(gauge)], '2026-01-12')).toBeNull()
  })
})
