import { describe, expect, it } from 'vitest'
import { keys } from '../../test-support/planned.ts'
import { utilitySheet } from '../../test-support/utility-sheet.ts'
import { roadPositions, type WheelPosition } from '../wheels.ts'
import { isAdded } from './added-bundles.ts'
import { askedBundle } from './asked-bundles.ts'
import { type AskedJob, askedKinds, patternsFor } from './asked-jobs.ts'
import { demoPrices as prices } from './demo-prices.test-support.ts'
import { priceEstimate } from './price-estimate.ts'
import type { SoldItem } from './sold-items.ts'

const direct = utilitySheet
const tire: SoldItem = {
  key: 'tire',
  words: 'All-season tire',
  kind: 'tire',
  size: '235/60R18 103H',
  cents: 16_400,
  depositCents: null,
}
const indirect = { ...direct, system: 'indirect', sensor: null, spareMonitored: false } as const
const linesOf = (job: AskedJob, sheet: typeof direct | typeof indirect = direct) =>
  askedBundle(job, prices, sheet).lines.map(({ code, lineKey, quantityHundredths, amountCents }) => [
    code ?? lineKey,
    quantityHundredths,
    amountCents,
  ])
const worksOf = (job: AskedJob, sheet: typeof direct | typeof indirect = direct) =>
  askedBundle(job, prices, sheet).works.map((work) =>
    'wheel' in work ? `${work.kind} ${work.wheel}` : work.kind,
  )

describe('a job that the customer asks for', () => {
  it('is a rotation with the time of the book, then what the vehicle must learn', () => {
    const rotation = { kind: 'rotation', pattern: 'rearward-cross' } as const
    const standing = { ...direct, locatesWheels: false }
    expect(worksOf(rotation, standing)).toEqual(['rotate', 'relearn', 'set-pressures'])
    expect(linesOf(rotation, standing)).toEqual([
      ['rotation-labor', 30, 3_900],
      ['relearn', 30, 3_900],
      ['pressures', 100, 0],
    ])
    expect(worksOf(rotation, { ...direct, locatesWheels: true })).toEqual(['rotate', 'set-pressures'])
    expect(worksOf(rotation, indirect)).toEqual(['rotate', 'reset', 'set-pressures'])
  })

  it('is the other season’s wheels, whose sensors the vehicle must learn also where it finds the places itself', () => {
    expect(worksOf({ kind: 'season' }, { ...direct, locatesWheels: true })).toEqual([
      'swap-wheels',
      'relearn',
      'set-pressures',
    ])
    expect(linesOf({ kind: 'season' })[0]).toEqual(['season-labor', 50, 6_500])
  })

  it('is new tires with their sensors kept, by the size of the book, with stems and disposal', () => {
    const job = { kind: 'tires', wheels: ['RR', 'LF'], tire } as const
    expect(worksOf(job)).toEqual([
      'fit-tire LF',
      'service-stem LF',
      'fit-tire RR',
      'service-stem RR',
      'set-pressures',
    ])
    expect(linesOf(job).slice(0, 2)).toEqual([
      ['tire', 200, 32_800],
      ['tire-disposal', 200, 800],
    ])
    const fee = {
      key: 'state',
      words: 'State tire fee',
      per: 'tire',
      cents: 150,
      capCents: null,
      taxClass: 'none',
    } as const
    const priced = priceEstimate({
      bundles: [askedBundle(job, prices, direct)],
      prices: { ...prices, fees: [fee] },
      revision: 1,
      readyAt: null,
    })
    expect(priced.bundles[0]?.money.lines).toContainEqual(
      expect.objectContaining({ lineKey: 'fee.state', amountCents: 300 }),
    )
  })

  it('is a torque check or pressures without a charge where the book asks no time for it', () => {
    const again = { kind: 'torque-again', wheels: roadPositions } as const
    expect(linesOf(again)).toEqual([['torque-again', 100, 0]])
    expect(linesOf({ kind: 'pressures' })).toEqual([['pressures-alone', 100, 0]])
    const charging = { ...prices, hours: { ...prices.hours, torqueAgain: 20, pressures: 10 } }
    expect(askedBundle(again, charging, direct).lines[0]).toMatchObject({ amountCents: 2_600, kind: 'labor' })
    expect(askedBundle({ kind: 'pressures' }, charging, direct).lines[0]).toMatchObject({
      amountCents: 1_300,
    })
  })

  it('takes nothing twice for a tire that is open for other work', () => {
    const codes = (job: AskedJob, opened: readonly WheelPosition[]) =>
      askedBundle(job, prices, direct, opened).lines.map(({ code }) => code)
    for (const kind of ['sensors', 'stems'] as const) {
      expect(codes({ kind, wheels: ['LR'] }, [])).toContain('wheel-service')
      expect(codes({ kind, wheels: ['LR'] }, ['LR'])).not.toContain('wheel-service')
    }
    const both = askedBundle({ kind: 'tires', wheels: ['RR', 'LR'], tire }, prices, direct, ['LR'])
    expect(both.lines.find(({ code }) => code === 'wheel-service')?.wheels).toEqual(['RR'])
  })

  it('gives a spare that nothing listens to a plain stem', () => {
    expect(askedBundle({ kind: 'spare' }, prices, { ...direct, spareMonitored: false }).works[0]).toEqual({
      kind: 'service-stem',
      wheel: 'SP',
      valve: 'plain',
    })
  })

  it('brings steps, each, and is no matter of safety', () => {
    const jobs: AskedJob[] = [
      { kind: 'rotation', pattern: 'front-to-back' },
      { kind: 'season' },
      { kind: 'tires', wheels: roadPositions, tire: null },
      { kind: 'stems', wheels: ['LF'] },
      { kind: 'sensors', wheels: roadPositions },
      { kind: 'torque-again', wheels: roadPositions },
      { kind: 'spare' },
      { kind: 'pressures' },
      { kind: 'relearn' },
    ]
    for (const job of jobs) {
      const bundle = askedBundle(job, prices, direct)
      expect(keys(bundle.works).length, job.kind).toBeGreaterThan(1)
      expect(bundle).toMatchObject({ safety: false, findings: [], alternativeTo: null })
      expect(isAdded(bundle)).toBe(true)
    }
    expect(keys(askedBundle({ kind: 'reset' }, prices, indirect).works, indirect)).toContain(
      'vehicle.relearn.done',
    )
  })
})

describe('what can be asked for', () => {
  it('is what the shop has a price for and the vehicle can have', () => {
    expect(askedKinds(prices, direct)).toEqual([
      'rotation',
      'tires',
      'season',
      'sensors',
      'stems',
      'spare',
      'pressures',
      'torque-again',
      'relearn',
    ])
    const { rotation: _rotation, season: _season, ...hours } = prices.hours
    expect(askedKinds({ ...prices, hours }, { ...indirect, spare: 'none' })).toEqual([
      'tires',
      'stems',
      'pressures',
      'torque-again',
      'reset',
    ])
  })

  it('leaves wheels on their axle where the axles differ, and the spare out where it is a temporary one', () => {
    expect(patternsFor({ ...direct, staggered: true })).toEqual(['side-to-side'])
    expect(patternsFor({ ...direct, spare: 'temporary' })).not.toContain('five-forward-cross')
  })
})
