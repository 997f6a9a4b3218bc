import { describe, expect, it } from 'vitest'
import type { Evidence } from '../../evidence/evidence-schema.ts'
import { caseNamed } from '../cases/worked-cases.test-support.ts'
import type { Supposition } from '../checks/field-check.ts'
import { suppose } from '../checks/suppose.ts'
import type { Finding } from '../diagnosis.ts'
import { judge } from '../engine/judge.ts'
import { findingOf } from '../finding-of.ts'

/** A sound vehicle without light, 35 psi at 60 °F all round. */
const sound = suppose(caseNamed('K24').evidence, { 'light.behavior': 'off' })

const found = (code: Finding['code'], ...suppositions: Supposition[]): Finding | undefined => {
  const judgment = judge(suppositions.reduce<Evidence>((evidence, one) => suppose(evidence, one), sound))
  const judged = judgment.judged.find(({ rule }) => rule.code === code)
  return judged && findingOf(judgment, judged)
}

const earlier = (
  ...readings: { wheel: string; pressure: number; daysAgo: number; temperature?: number }[]
): Supposition => ({
  'history.earlierReadings': readings.map((reading) => ({ temperature: 60, ...reading })),
})

describe('a slow leak', () => {
  it.each([
    ['1.5 psi in ten days', 36.5, 10, false],
    ['1.7 psi in ten days', 36.7, 10, true],
    ['1.7 psi in 30 days', 36.7, 30, false],
    ['2.2 psi in 30 days', 37.2, 30, true],
  ])('is found, or not, by a loss of %s', (_, pressure, daysAgo, leaks) => {
    expect(found('slow-leak', earlier({ wheel: 'LF', pressure, daysAgo }))?.wheels).toEqual(
      leaks ? ['LF'] : undefined,
    )
  })

  it('is likely, and firm from the first tire on that lost more than 3 psi', () => {
    const slight = { wheel: 'RR', pressure: 37.9, daysAgo: 10 }
    const large = { wheel: 'LF', pressure: 38.2, daysAgo: 10 }
    expect(found('slow-leak', earlier(slight))?.confidence).toBe('likely')
    expect(found('slow-leak', earlier(large))?.confidence).toBe('firm')
    expect(found('slow-leak', earlier(slight, large))?.confidence).toBe('firm')
  })

  it('names the loss of the tire that loses fastest, and the days that are left', () => {
    const leak = found(
      'slow-leak',
      earlier({ wheel: 'LF', pressure: 37, daysAgo: 20 }, { wheel: 'RR', pressure: 38, daysAgo: 10 }),
    )
    expect(leak).toMatchObject({
      kind: 'also',
      wheels: ['LF', 'RR'],
      offers: ['leak-find'],
      figures: {
        wheels: ['LF', 'RR'],
        perDay: expect.closeTo(0.3, 2),
        drop: expect.closeTo(3, 1),
        unit: 'psi',
      },
    })
    const lost = (wheel: string, drop: number, days: number, perDay: number) => ({
      field: `wheels.${wheel}.gauge`,
      code: 'lost-since-reading',
      values: { drop, days, perDay, unit: 'psi' },
    })
    expect(leak?.because).toMatchObject([lost('LF', 2.03, 20, 0.1), lost('RR', 3.05, 10, 0.3)])
  })

  it('takes the weather out: what only got colder has not leaked', () => {
    const warmer = { wheel: 'LF', pressure: 37.5, daysAgo: 10, temperature: 84 }
    expect(found('slow-leak', earlier(warmer))).toBeUndefined()
  })

  it('is not judged of a tire whose label figure nobody has', () => {
    const reading = earlier({ wheel: 'LF', pressure: 39, daysAgo: 10 })
    expect(found('slow-leak', reading, { 'vehicle.placard.front': null })).toBeUndefined()
  })
})

describe('a slow loss', () => {
  it.each([
    ['2.9 psi under its mate and its label', 32.1, 35, false],
    ['3 psi under both', 32, 35, true],
    ['3 psi under its mate but not under its label', 35.5, 38.5, false],
    ['2.9 psi under its label, as its mate is', 32.1, 32.1, false],
  ])('is suspected, or not, of a tire %s', (_, gauge, mate, suspected) => {
    expect(
      found('slow-loss-suspected', { 'wheels.LF.gauge': gauge, 'wheels.RF.gauge': mate })?.wheels,
    ).toEqual(suspected ? ['LF'] : undefined)
  })

  it('is likely and offers to find the leak, saying what it rests on', () => {
    const loss = found('slow-loss-suspected', { 'wheels.RR.gauge': 31 })
    expect(loss).toMatchObject({ kind: 'also', confidence: 'likely', wheels: ['RR'], offers: ['leak-find'] })
    expect(loss?.because).toMatchObject([
      { field: 'wheels.RR.gauge', value: 31, unit: 'psi', code: 'cold-under-mate' },
    ])
  })

  it('is suspected of both tires of an axle that lack 3 psi more than the two others', () => {
    expect(found('slow-loss-suspected', { 'wheels.LF.gauge': 32, 'wheels.RF.gauge': 32 })?.wheels).toEqual([
      'LF',
      'RF',
    ])
  })

  it('is suspected without a reading of the mate only against two other tires', () => {
    const noMate = { 'wheels.LF.gauge': 31, 'wheels.RF.gauge': null }
    expect(found('slow-loss-suspected', noMate)?.wheels).toEqual(['LF'])
    expect(found('slow-loss-suspected', { ...noMate, 'wheels.RR.gauge': null })).toBeUndefined()
  })
})
