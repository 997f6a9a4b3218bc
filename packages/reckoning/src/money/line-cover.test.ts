import { describe, expect, it } from 'vitest'
import { type Asked, type ComebackFacts, type EarlierWork, judgeCover } from './line-cover.ts'
import { usualWarranty } from './warranty.ts'

const work = (change: Partial<EarlierWork> = {}): EarlierWork => ({
  orderNumber: 'T-2581',
  done: { day: '2025-12-31', miles: 40_000 },
  wheels: ['LR'],
  sensors: ['LR'],
  relearned: true,
  ...change,
})

const facts = (change: Partial<ComebackFacts> = {}): ComebackFacts => ({
  came: { day: '2026-01-12', miles: 40_312 },
  terms: usualWarranty,
  works: [work()],
  ...change,
})

const sensor = (wheel: 'LR' | 'LF'): Asked => ({ kind: 'sensor', wheel })
const labor = (wheel: 'LR' | 'LF'): Asked => ({ kind: 'wheel', wheel })
const vehicle: Asked = { kind: 'vehicle', wheel: null }

describe('what the terms of the shop say of a comeback', () => {
  it('covers a sensor of ours by its own term, and the work to renew it by the term of labor', () => {
    expect(judgeCover(facts(), 'part-failed', sensor('LR'))).toEqual({
      ...{ is: 'covered', term: 'sensor', orderNumber: 'T-2581' },
      ...{ until: '2027-12-31', untilMiles: 64_000 },
    })
    const byLabor = { is: 'covered', term: 'labor', orderNumber: 'T-2581', until: '2026-12-31' }
    expect(judgeCover(facts(), 'part-failed', labor('LR'))).toMatchObject(byLabor)
    expect(judgeCover(facts(), 'part-failed', vehicle)).toMatchObject(byLabor)
  })

  it('covers up to and including the last day, and the sensor longer than the work', () => {
    const at = (day: string) => facts({ came: { day, miles: 41_000 } })
    expect(judgeCover(at('2026-12-31'), 'part-failed', labor('LR')).is).toBe('covered')
    expect(judgeCover(at('2027-01-01'), 'part-failed', labor('LR'))).toEqual({
      ...{ is: 'charged', why: 'days-over', until: '2026-12-31', untilMiles: null },
    })
    expect(judgeCover(at('2027-01-01'), 'part-failed', sensor('LR')).is).toBe('covered')
    expect(judgeCover(at('2028-01-01'), 'part-failed', sensor('LR'))).toMatchObject({ why: 'days-over' })
  })

  it('counts miles where the terms do, and leaves it to a person where nobody read them', () => {
    const at = (miles: number | null) => facts({ came: { day: '2026-06-01', miles } })
    expect(judgeCover(at(64_000), 'part-failed', sensor('LR')).is).toBe('covered')
    expect(judgeCover(at(64_001), 'part-failed', sensor('LR'))).toMatchObject({
      ...{ is: 'charged', why: 'miles-over', untilMiles: 64_000 },
    })
    expect(judgeCover(at(null), 'part-failed', sensor('LR')).is).toBe('open')
    expect(judgeCover(at(null), 'part-failed', labor('LR')).is).toBe('covered')
  })

  it('does not cover another wheel, nor a sensor that we did not fit', () => {
    expect(judgeCover(facts(), 'part-failed', sensor('LF'))).toMatchObject({ why: 'another-wheel' })
    const rotated = facts({ works: [work({ wheels: ['LF', 'LR'], sensors: [], relearned: false })] })
    expect(judgeCover(rotated, 'part-failed', sensor('LR'))).toMatchObject({ why: 'part-not-ours' })
    expect(judgeCover(rotated, 'part-failed', labor('LR'))).toMatchObject({ why: 'part-not-ours' })
    expect(judgeCover(facts({ works: [] }), 'not-found', vehicle)).toMatchObject({ why: 'work-not-ours' })
  })

  it('covers by the term of labor all that bad work of ours spoiled on its wheel', () => {
    const rotated = facts({ works: [work({ sensors: [], relearned: false })] })
    expect(judgeCover(rotated, 'workmanship', sensor('LR'))).toMatchObject({ is: 'covered', term: 'labor' })
    expect(judgeCover(rotated, 'workmanship', labor('LR'))).toMatchObject({ is: 'covered', term: 'labor' })
    expect(judgeCover(rotated, 'workmanship', sensor('LF'))).toMatchObject({ why: 'another-wheel' })
  })

  it('covers no new damage and nothing that wears', () => {
    for (const asked of [sensor('LR'), labor('LR'), vehicle])
      expect(judgeCover(facts(), 'new-damage', asked)).toMatchObject({ is: 'charged', why: 'new-damage' })
    expect(judgeCover(facts(), 'workmanship', { kind: 'wear-part', wheel: 'LR' })).toMatchObject({
      why: 'wear-part',
    })
  })

  it('counts from the newest work where there is more than one', () => {
    const twice = facts({
      came: { day: '2027-03-01', miles: 52_000 },
      works: [
        work({ orderNumber: 'T-2900', done: { day: '2026-08-01', miles: 48_000 } }),
        work({ done: { day: '2025-12-31', miles: 40_000 } }),
      ],
    })
    expect(judgeCover(twice, 'part-failed', labor('LR'))).toMatchObject({
      ...{ orderNumber: 'T-2900', until: '2027-08-01' },
    })
  })
})
