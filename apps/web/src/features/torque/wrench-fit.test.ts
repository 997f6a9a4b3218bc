import { describe, expect, it } from 'vitest'
import { otherUnit } from './torque-words.ts'
import { type Wrench, whyNotWrench } from './wrench-fit.ts'

const wrench: Wrench = {
  kind: 'wrench',
  instrumentId: '018f0000-0000-7000-8000-000000000001',
  locationId: '018f0000-0000-7000-8000-000000000002',
  code: 'W-07',
  dueOn: '2026-06-15',
  quarantined: false,
  cycles: 1_220,
  rangeLow: 30,
  rangeHigh: 250,
  rangeUnit: 'lbf·ft',
}
const figure = { value: 83, unit: 'lbf·ft' } as const
const today = '2026-01-12'

describe('a wrench', () => {
  it('in calibration and in range may be chosen, on its due day too', () => {
    expect(whyNotWrench(wrench, figure, today)).toBeUndefined()
    expect(whyNotWrench({ ...wrench, dueOn: today }, figure, today)).toBeUndefined()
  })

  it('cannot be chosen when overdue, worn, quarantined or out of range, and says why', () => {
    expect(whyNotWrench({ ...wrench, dueOn: '2026-01-09' }, figure, today)).toMatch(/Overdue.*2026-01-09/)
    expect(whyNotWrench({ ...wrench, cycles: 5_000 }, figure, today)).toMatch(/5,000 clicks/)
    expect(whyNotWrench({ ...wrench, quarantined: true }, figure, today)).toMatch(/Quarantined/)
    expect(whyNotWrench({ ...wrench, rangeLow: 100 }, figure, today)).toMatch(/100 to 250/)
    const half = { ...figure, value: figure.value / 2 }
    expect(whyNotWrench({ ...wrench, rangeLow: 60 }, half, today, 'half')).toMatch(/60 to 250/)
    expect(whyNotWrench({ ...wrench, rangeLow: 30, rangeHigh: 300 }, half, today, 'half')).toBeUndefined()
  })

  it('is compared in its own unit', () => {
    const metric = { ...wrench, rangeLow: 40, rangeHigh: 200, rangeUnit: 'N·m' } as const
    expect(whyNotWrench(metric, figure, today)).toBeUndefined()
    expect(whyNotWrench(metric, { value: 160, unit: 'lbf·ft' }, today)).toMatch(/Out of range/)
  })
})

describe('a torque in words', () => {
  it('is shown in both units', () => {
    expect(otherUnit(figure, 'wheel')).toEqual({ value: 113, unit: 'N·m' })
    expect(otherUnit({ value: 160, unit: 'N·m' }, 'wheel')).toEqual({ value: 118, unit: 'lbf·ft' })
    expect(otherUnit({ value: 62, unit: 'lbf·in' }, 'sensor')).toEqual({ value: 7, unit: 'N·m' })
  })
})
