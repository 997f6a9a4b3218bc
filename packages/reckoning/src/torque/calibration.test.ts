import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { calibrationDueOn, calibrationLapse, cyclesLeft, workingDaysLeft } from './calibration.ts'

describe('the day on which a wrench is due', () => {
  it.each([
    ['2025-10-01', null, '2026-10-01'],
    ['2025-10-01', '2026-02-01', '2026-02-01'],
    ['2025-10-01', '2026-10-01', '2026-10-01'],
    ['2025-10-01', '2026-12-24', '2026-10-01'],
    ['2024-02-29', null, '2025-02-28'],
    ['2023-03-01', null, '2024-03-01'],
    ['2025-12-31', null, '2026-12-31'],
  ])('first used %s, clicks spent on %s: %s', (firstUsedOn, spentOn, dueOn) => {
    expect(calibrationDueOn(firstUsedOn, spentOn)).toBe(dueOn)
  })

  it.each([
    ['2025-08-31', 6, '2026-02-28'],
    ['2025-10-31', 1, '2025-11-30'],
    ['2025-11-30', 3, '2026-02-28'],
    ['2025-10-01', 24, '2026-10-01'],
  ])('is sooner for a shop that sets it so, never later: %s and %i months is %s', (first, months, dueOn) => {
    expect(calibrationDueOn(first, null, { months, cycles: 5_000 })).toBe(dueOn)
  })

  it('is never after twelve months, whatever the shop sets', () => {
    const day = fc
      .date({ min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10))
    fc.assert(
      fc.property(day, fc.option(day), fc.integer({ min: 1, max: 60 }), (first, spentOn, months) => {
        const dueOn = calibrationDueOn(first, spentOn, { months, cycles: 5_000 })
        expect(dueOn <= `${Number(first.slice(0, 4)) + 1}${first.slice(4)}`).toBe(true)
        if (spentOn !== null) expect(dueOn <= spentOn).toBe(true)
        else expect(dueOn > first).toBe(true)
      }),
      { seed: 20260112, numRuns: 1_000 },
    )
  })
})

describe('a wrench', () => {
  const today = '2026-01-12'
  it.each([
    ['2026-01-13', 0, null],
    ['2026-01-12', 4_999, null],
    ['2026-01-11', 0, 'day'],
    ['2026-01-13', 5_000, 'cycles'],
    ['2026-01-13', 5_001, 'cycles'],
    ['2026-01-11', 5_000, 'day'],
  ])('due on %s with %i clicks lapsed by %s', (dueOn, cycles, lapse) => {
    expect(calibrationLapse({ dueOn, cycles }, today)).toBe(lapse)
  })

  it("lapses at the shop's own count where that is the lower one", () => {
    const wrench = { dueOn: today, cycles: 3_000 }
    expect(calibrationLapse(wrench, today, { months: 12, cycles: 3_000 })).toBe('cycles')
    expect(calibrationLapse(wrench, today, { months: 12, cycles: 3_001 })).toBeNull()
    expect(calibrationLapse({ ...wrench, cycles: 5_000 }, today, { months: 12, cycles: 9_000 })).toBe(
      'cycles',
    )
  })

  it('has what is left of its clicks, and nothing once they are spent', () => {
    expect(cyclesLeft(4_610)).toBe(390)
    expect(cyclesLeft(6_000)).toBe(0)
  })

  it.each([
    [0, 200, 25],
    [0, 300, 17],
    [4_610, 200, 2],
    [4_999, 200, 1],
    [5_000, 200, 0],
    [0, 0, null],
  ])('with %i clicks at %i a day has spent them on working day %s', (cycles, perDay, days) => {
    expect(workingDaysLeft(cycles, perDay)).toBe(days)
  })
})
