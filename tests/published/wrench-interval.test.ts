/**
 * Source: a calibration laboratory's page on ISO 6789, read online in 2026 (torquewcs.com.au): recalibration after
 * one year or 5,000 cycles, whichever comes first. That the year starts at first use is from memory. The days were
 * counted by hand.
 */
import {
  calibrationDueOn,
  calibrationLapse,
  cyclesLeft,
  usualInterval,
} from '@bayledger/reckoning/torque/calibration'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  {
    document: 'ISO 6789',
    section: "interval, on a calibration laboratory's page",
    edition: '2026',
    certainty: 'read',
  },
  () => {
    it('the interval is twelve months', () => {
      expect(usualInterval.months).toBe(12)
    })

    it('the interval is 5,000 cycles', () => {
      expect(cyclesLeft(0)).toBe(5_000)
    })

    it.each([
      ['2025-10-01', null, '2026-10-01'],
      ['2025-10-01', '2026-02-01', '2026-02-01'],
      ['2025-10-01', '2026-11-01', '2026-10-01'],
    ])('first used on %s, its 5,000th cycle on %s, it is due on %s', (firstUsedOn, reachedOn, dueOn) => {
      expect(calibrationDueOn(firstUsedOn, reachedOn)).toBe(dueOn)
    })

    it.each([
      [4_999, '2026-09-30', null],
      [5_000, '2026-02-01', 'cycles'],
      [4_999, '2026-10-02', 'day'],
    ])('with %i cycles on %s it has lapsed by %s', (cycles, today, lapse) => {
      expect(calibrationLapse({ dueOn: '2026-10-01', cycles }, today)).toBe(lapse)
    })
  },
)
