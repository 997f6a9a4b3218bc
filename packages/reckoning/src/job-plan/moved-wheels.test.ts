import { describe, expect, it } from 'vitest'
import { doesOf, howOf } from '../../test-support/in-words.ts'
import {
  atTheEnd,
  closed,
  find,
  fiveAlike,
  hub,
  indirect,
  keys,
  keysAt,
  onTheRoad,
  steps,
} from '../../test-support/planned.ts'
import { utilitySheet as sheet } from '../../test-support/utility-sheet.ts'
import type { Work } from '../estimate.ts'
import type { SpecificationSheet } from '../sheet.ts'
import { roadPositions } from '../wheels.ts'

describe('the other season’s wheels', () => {
  const works: readonly Work[] = [{ kind: 'swap-wheels' }]

  it('are all read before the first wheel comes off, and the vehicle learns them', () => {
    expect(keys(works).slice(0, 4)).toEqual([
      'LF.other.read',
      'RF.other.read',
      'RR.other.read',
      'LR.other.read',
    ])
    for (const wheel of roadPositions) {
      expect(find(`${wheel}.wheel.off`, works).waitsFor).toEqual([
        ...keys(works).slice(0, 4),
        'vehicle.lift.up',
      ])
      expect(howOf(find(`${wheel}.wheel.on`, works))).toContain("The other set's wheel")
      expect(keysAt(wheel, works)).toEqual(['other.read', 'wheel.off', ...hub, ...atTheEnd])
    }
    expect(keys(works)).toContain('vehicle.relearn.done')
  })

  it('do not go on without sensors where the vehicle listens for them', () => {
    expect(howOf(find('LF.other.read', works))).toContain('No sensor, or silent twice: stop')
    expect(find('LF.other.read', works).figure).toMatchObject({ megahertz: 315 })
    expect(howOf(find('LF.other.read', works, indirect))).not.toContain('sensor')
    expect(find('LF.other.read', works, indirect).figure).toBeNull()
  })

  it('are not rotated in the same order', () => {
    const both: readonly Work[] = [...works, { kind: 'rotate', pattern: 'front-to-back' }]
    expect(howOf(find('vehicle.rotation.tires', both))).toContain('The other set goes on')
    expect(steps(both).some(({ comesFrom }) => comesFrom)).toBe(false)
  })
})

describe('a rotation', () => {
  const works: readonly Work[] = [{ kind: 'rotate', pattern: 'rearward-cross' }]
  const five: readonly Work[] = [{ kind: 'rotate', pattern: 'five-rearward-cross' }]

  it('checks the tires, takes all wheels off, then puts each where its pattern says', () => {
    expect(keys(works)).toEqual([
      'vehicle.rotation.tires',
      'vehicle.lift.up',
      ...roadPositions.map((wheel) => `${wheel}.wheel.off`),
      ...roadPositions.map((wheel) => `${wheel}.wheel.on`),
      'vehicle.lift.touching',
      ...roadPositions.flatMap((wheel) => hub.slice(1, 4).map((key) => `${wheel}.${key}`)),
      ...roadPositions.map((wheel) => `${wheel}.studs.second-check`),
      'vehicle.lift.down',
      ...[...roadPositions, 'SP'].map((wheel) => `${wheel}.pressure.set`),
      'vehicle.last.look',
      ...roadPositions.map((wheel) => `${wheel}.closing.read`),
      ...onTheRoad,
    ])
    const on = find('LF.wheel.on', works)
    expect(on.comesFrom).toBe('LR')
    expect(on.waitsFor).toEqual(['LF.wheel.off', 'LR.wheel.off'])
    expect(howOf(on)).toContain('The wheel marked LR, from the left rear, goes on here.')
    for (const wheel of roadPositions)
      expect(find(`${wheel}.wheel.off`, works).waitsFor).toEqual([
        'vehicle.rotation.tires',
        'vehicle.lift.up',
      ])
    expect(find('vehicle.lift.up', works).waitsFor).toEqual(['vehicle.rotation.tires'])
  })

  it('says which ID the vehicle must then hold where', () => {
    expect(howOf(find('vehicle.closing.module', works))).toContain(
      'After this rotation: LF the ID that was read at LR, RF the ID that was read at RR',
    )
    expect(howOf(find('vehicle.closing.module', [{ kind: 'relearn' }]))).not.toContain('rotation')
  })

  it('of a wheel whose tire is opened waits for that tire at the wheel’s new place', () => {
    const withTire: readonly Work[] = [...works, { kind: 'fit-tire', wheel: 'LR' }]
    expect(find('LF.wheel.on', withTire).waitsFor).toEqual(['LF.wheel.off', 'LR.tire.balance'])
    expect(find('LR.wheel.on', withTire).waitsFor).toEqual(['LR.wheel.off', 'RF.wheel.off'])
  })

  it('of five takes the spare out and stows another, which is set there', () => {
    expect(keysAt('SP', five, fiveAlike)).toEqual(['wheel.out', 'wheel.stow', 'pressure.set'])
    expect(find('RR.wheel.on', five, fiveAlike).waitsFor).toEqual(['RR.wheel.off', 'SP.wheel.out'])
    expect(howOf(find('RR.wheel.on', five, fiveAlike))).toContain('marked SP, the spare,')
    expect(find('SP.wheel.stow', five, fiveAlike)).toMatchObject({
      comesFrom: 'LF',
      waitsFor: ['SP.wheel.out', 'LF.wheel.off'],
    })
    expect(find('SP.pressure.set', five, fiveAlike).waitsFor).toEqual(['SP.wheel.stow', 'vehicle.lift.down'])
    const opened: readonly Work[] = [...five, { kind: 'fit-tire', wheel: 'SP' }]
    expect(find('SP.tire.open', opened, fiveAlike).waitsFor).toEqual(['SP.wheel.out'])
    expect(find('RR.wheel.on', opened, fiveAlike).waitsFor).toEqual(['RR.wheel.off', 'SP.tire.balance'])
    expect(find('SP.pressure.set', opened, fiveAlike).waitsFor).toEqual([
      'SP.wheel.stow',
      'vehicle.lift.down',
    ])
  })

  it('that the sheet refuses moves nothing and says why', () => {
    const refused = (on: SpecificationSheet, pattern: 'front-to-back' | 'five-forward-cross') => {
      const works: readonly Work[] = [{ kind: 'rotate', pattern }]
      expect(steps(works, on).some(({ closedBy }) => closedBy === 'wheel.removed')).toBe(false)
      return howOf(find('vehicle.rotation.tires', works, on))
    }
    expect(refused({ ...sheet, staggered: true }, 'front-to-back')).toContain('no wheel leaves its axle')
    const wide = { ...sheet, tire: { ...sheet.tire, rear: { ...sheet.tire.rear, size: '275/35R18' } } }
    expect(refused(wide, 'front-to-back')).toContain('no wheel leaves its axle')
    expect(refused(sheet, 'five-forward-cross')).toContain('temporary')
    expect(refused({ ...sheet, spare: 'none' }, 'five-forward-cross')).toContain('has no spare')
    expect(refused({ ...fiveAlike, tire: sheet.tire }, 'five-forward-cross')).toContain('not of the size')
    expect(keysAt('LF', [{ kind: 'rotate', pattern: 'side-to-side' }], wide)).toContain('wheel.off')
  })

  it('by two patterns at once is none', () => {
    const two: readonly Work[] = [...works, { kind: 'rotate', pattern: 'cross' }]
    expect(howOf(find('vehicle.rotation.tires', two))).toContain('Two patterns are authorized.')
    expect(keys(two)).not.toContain('LF.wheel.off')
  })

  it('is followed by a reset without sensors, and by nothing to learn without a system', () => {
    expect(doesOf(find('vehicle.relearn.done', works, indirect))).toBe('Tell the vehicle its tires are right')
    expect(keys(works, { ...sheet, system: 'none', sensor: null })).not.toContain('vehicle.relearn.done')
  })
})

describe('the spare alone', () => {
  it('is taken out, opened, stowed again and torqued nowhere, and nothing is lifted', () => {
    const works: readonly Work[] = [{ kind: 'service-stem', wheel: 'SP', valve: 'plain' }]
    expect(keysAt('SP', works)).toEqual([
      'wheel.out',
      'tire.open',
      'tire.inside',
      'stem.renew',
      ...closed,
      'wheel.stow',
      'pressure.set',
    ])
    expect(find('SP.tire.open', works).waitsFor).toEqual(['SP.wheel.out'])
    expect(doesOf(find('SP.wheel.stow', works))).toBe('Stow the spare again')
    expect(find('SP.wheel.stow', works).waitsFor).toEqual(['SP.tire.balance'])
    expect(find('SP.pressure.set', works).waitsFor).toEqual(['SP.wheel.stow'])
    expect(steps(works).every(({ height }) => height === 'floor')).toBe(true)
  })
})
