import { describe, expect, it } from 'vitest'
import { doesOf, howOf } from '../../test-support/in-words.ts'
import { utilitySheet as sheet } from '../../test-support/utility-sheet.ts'
import type { Work } from '../estimate.ts'
import type { SpecificationSheet } from '../sheet.ts'
import { JobPlan, type Step } from '../step.ts'
import { type RoadPosition, roadPositions } from '../wheels.ts'
import { planJob } from './plan-job.ts'

const indirect: SpecificationSheet = {
  ...sheet,
  system: 'indirect',
  sensor: null,
  relearn: {
    method: 'reset',
    entry: 'Hold the button.',
    confirmation: 'The light flashes three times.',
    exit: 'Key off.',
    timeLimitMinutes: null,
    parkMinutes: null,
    driveMinutes: 30,
    driveSpeedMph: null,
    knownTrap: null,
  },
  sources: { ...sheet.sources, frequency: null },
}
const fiveAlike: SpecificationSheet = {
  ...sheet,
  spare: 'full-size',
  tire: { ...sheet.tire, spare: sheet.tire.front },
}

const steps = (works: readonly Work[], on: SpecificationSheet = sheet): readonly Step[] =>
  JobPlan.parse(
    planJob(
      on,
      works.map((work) => ({ work, bundleKey: work.kind })),
      1,
    ),
  ).steps
const keys = (works: readonly Work[], on?: SpecificationSheet) =>
  steps(works, on).map(({ stepKey }) => stepKey)
const keysAt = (place: string, works: readonly Work[], on?: SpecificationSheet) =>
  keys(works, on).flatMap((key) => (key.startsWith(`${place}.`) ? [key.slice(3)] : []))
const find = (key: string, works: readonly Work[], on?: SpecificationSheet): Step => {
  const step = steps(works, on).find(({ stepKey }) => stepKey === key)
  if (!step) throw new Error(`no step ${key}`)
  return step
}

const hub = ['wheel.on', 'studs.torque-half', 'studs.torque-full', 'studs.torque-again', 'studs.second-check']
const atTheEnd = ['pressure.set', 'closing.read']
const closed = ['tire.seat', 'tire.core', 'tire.leak', 'tire.balance']
const vehicleEnd = [
  'vehicle.relearn.done',
  'vehicle.closing.module',
  'vehicle.proof.drive',
  'vehicle.closing.light',
  'vehicle.last.look',
]

describe('one new sensor', () => {
  const works: readonly Work[] = [
    { kind: 'fit-sensor', wheel: 'RR', valve: 'clamp-in', identity: 'new' },
    { kind: 'relearn' },
    { kind: 'set-pressures' },
  ]

  it('is matched, programmed, fitted, read in the open tire, and its wheel checked by a second person', () => {
    expect(keysAt('RR', works)).toEqual([
      'sensor.match',
      'sensor.program',
      'wheel.off',
      'tire.open',
      'tire.inside',
      'sensor.fit',
      'sensor.read-in-rim',
      ...closed,
      ...hub,
      ...atTheEnd,
    ])
    expect(keysAt('LF', works)).toEqual(atTheEnd)
  })

  it('is read before the tire goes on, and its core is torqued before the leak check', () => {
    expect(find('RR.tire.seat', works).waitsFor).toEqual(['RR.sensor.read-in-rim'])
    expect(find('RR.sensor.read-in-rim', works).waitsFor).toEqual(['RR.sensor.fit'])
    expect(find('RR.tire.leak', works).waitsFor).toEqual(['RR.tire.core'])
  })

  it('with a clamp-in stem shows the nut’s torque and requires a photo', () => {
    const fit = find('RR.sensor.fit', works)
    expect(fit.figure).toMatchObject({ torque: { value: 62, unit: 'lbf·in' } })
    expect(fit.needs).toEqual(['value', 'photo'])
    expect(howOf(fit)).toContain('without penetrant')
    expect(howOf(fit)).toContain('in one pull')
  })

  it('with a rubber stem shows the screw’s torque, or says that the sheet has none', () => {
    const rubber: readonly Work[] = [{ kind: 'fit-sensor', wheel: 'RR', valve: 'snap-in', identity: 'copy' }]
    const lacking = find('RR.sensor.fit', rubber)
    expect(lacking.figure).toBeNull()
    expect(howOf(lacking)).toContain('The sheet has no torque for the stem screw')
    expect(howOf(lacking)).not.toContain('The label calls')
    const screw = { ...sheet, sensor: sheet.sensor && { ...sheet.sensor, stemScrewTorque: newton(1.4) } }
    expect(find('RR.sensor.fit', rubber, screw).figure).toMatchObject({ torque: newton(1.4) })
    const slipped = { ...sheet, sensor: sheet.sensor && { ...sheet.sensor, stemScrewTorque: newton(14) } }
    expect(howOf(find('RR.sensor.fit', rubber, slipped))).toContain('for a stem screw')
  })

  it.each([
    [65, false],
    [66, true],
  ] as const)('with a rubber stem at a label of %d psi warns of its limit: %s', (psi, warns) => {
    const high = { ...sheet, placard: { ...sheet.placard, rear: { psi, kPa: psi * 7 } } }
    const at = (valve: 'snap-in' | 'clamp-in') =>
      howOf(find('RR.sensor.fit', [{ kind: 'fit-sensor', wheel: 'RR', valve, identity: 'new' }], high))
    expect(at('snap-in').includes(`The label calls for ${psi} psi`)).toBe(warns)
    expect(at('clamp-in')).not.toContain('The label calls')
  })
})

describe('a set of four', () => {
  it('is the work of one wheel four times, and the rest once', () => {
    const works: readonly Work[] = roadPositions.map((wheel) => ({
      kind: 'fit-sensor',
      wheel,
      valve: 'clamp-in',
      identity: 'new',
    }))
    for (const wheel of roadPositions) expect(keysAt(wheel, works)).toHaveLength(18)
    expect(keys(works).filter((key) => key.startsWith('vehicle.'))).toEqual(vehicleEnd)
  })
})

describe('a leak', () => {
  const works: readonly Work[] = [
    { kind: 'find-leak', wheel: 'LF' },
    { kind: 'service-stem', wheel: 'LF', valve: 'clamp-in' },
  ]

  it('is found, its tire seen inside, judged, repaired, and its stem parts renewed', () => {
    expect(keysAt('LF', works)).toEqual([
      'leak.find',
      'wheel.off',
      'tire.open',
      'tire.inside',
      'leak.judge',
      'leak.repair',
      'stem.renew',
      'sensor.read-in-rim',
      ...closed,
      ...hub,
      ...atTheEnd,
    ])
    expect(find('LF.leak.judge', works).waitsFor).toEqual(['LF.leak.find', 'LF.tire.inside'])
    expect(find('LF.stem.renew', works).figure).toMatchObject({ torque: { value: 62, unit: 'lbf·in' } })
  })

  it('whose stem parts were not authorized goes on only with the customer’s written No', () => {
    expect(howOf(find('LF.tire.seat', works))).not.toContain('written No')
    expect(howOf(find('LF.tire.seat', [{ kind: 'find-leak', wheel: 'LF' }]))).toContain('written No')
  })
})

describe('a plain stem', () => {
  it('has no torque and no sensor to read', () => {
    const works: readonly Work[] = [{ kind: 'service-stem', wheel: 'LR', valve: 'plain' }]
    expect(find('LR.stem.renew', works).figure).toBeNull()
    expect(howOf(find('LR.stem.renew', works))).toContain('stem puller')
    expect(howOf(find('LR.stem.renew', works))).toContain('silent when read twice')
    expect(keysAt('LR', works)).not.toContain('sensor.read-in-rim')
  })
})

describe('new tires with the sensors kept', () => {
  const works: readonly Work[] = roadPositions.flatMap((wheel): Work[] => [
    { kind: 'fit-tire', wheel },
    { kind: 'service-stem', wheel, valve: 'clamp-in' },
  ])

  it('are matched, fitted with new stem parts, and each wheel is checked by a second person', () => {
    for (const wheel of roadPositions)
      expect(keysAt(wheel, works)).toEqual([
        'tire.match',
        'wheel.off',
        'tire.open',
        'tire.inside',
        'stem.renew',
        'sensor.read-in-rim',
        ...closed,
        ...hub,
        ...atTheEnd,
      ])
    expect(howOf(find('RF.tire.match', works))).toContain('235/60R18, SL')
    expect(howOf(find('SP.tire.match', [{ kind: 'fit-tire', wheel: 'SP' }]))).toContain(
      'no tire for this place',
    )
  })

  it('need no relearn where each sensor stays, and a reset where there is none', () => {
    expect(keys(works)).not.toContain('vehicle.relearn.done')
    expect(keys([{ kind: 'fit-tire', wheel: 'LF' }], indirect)).toContain('vehicle.relearn.done')
  })
})

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
      expect(find(`${wheel}.wheel.off`, works).waitsFor).toEqual(keys(works).slice(0, 4))
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
      ...roadPositions.map((wheel) => `${wheel}.wheel.off`),
      ...roadPositions.map((wheel) => `${wheel}.wheel.on`),
      ...roadPositions.flatMap((wheel) => hub.slice(1, 4).map((key) => `${wheel}.${key}`)),
      ...roadPositions.map((wheel) => `${wheel}.studs.second-check`),
      ...[...roadPositions, 'SP'].map((wheel) => `${wheel}.pressure.set`),
      'vehicle.relearn.done',
      ...roadPositions.map((wheel) => `${wheel}.closing.read`),
      ...vehicleEnd.slice(1),
    ])
    const on = find('LF.wheel.on', works)
    expect(on.comesFrom).toBe('LR')
    expect(on.waitsFor).toEqual(['LF.wheel.off', 'LR.wheel.off'])
    expect(howOf(on)).toContain('The wheel marked LR, from the left rear, goes on here.')
    for (const wheel of roadPositions)
      expect(find(`${wheel}.wheel.off`, works).waitsFor).toEqual(['vehicle.rotation.tires'])
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
    expect(find('SP.pressure.set', five, fiveAlike).waitsFor).toEqual(['SP.wheel.stow'])
    const opened: readonly Work[] = [...five, { kind: 'fit-tire', wheel: 'SP' }]
    expect(find('SP.tire.open', opened, fiveAlike).waitsFor).toEqual(['SP.wheel.out'])
    expect(find('RR.wheel.on', opened, fiveAlike).waitsFor).toEqual(['RR.wheel.off', 'SP.tire.balance'])
    expect(find('SP.pressure.set', opened, fiveAlike).waitsFor).toEqual(['SP.wheel.stow'])
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
  it('is opened where it lies and torqued nowhere', () => {
    const works: readonly Work[] = [{ kind: 'service-stem', wheel: 'SP', valve: 'plain' }]
    expect(keysAt('SP', works)).toEqual(['tire.open', 'tire.inside', 'stem.renew', ...closed, 'pressure.set'])
    expect(find('SP.tire.open', works).waitsFor).toEqual([])
    expect(find('SP.pressure.set', works).waitsFor).toEqual(['SP.tire.balance'])
  })
})

describe('the torque looked at after some miles', () => {
  const again = (wheel: RoadPosition): Work => ({ kind: 'torque-again', wheel })

  it('is one round a wheel and a last look, nothing else', () => {
    expect(keys(roadPositions.map(again))).toEqual([
      ...roadPositions.map((wheel) => `${wheel}.studs.torque-again`),
      'vehicle.last.look',
    ])
    const step = find('RF.studs.torque-again', [again('RF')])
    expect(step).toMatchObject({
      code: 'torque-after-miles',
      closedBy: 'studs.torqued',
      cautions: [{ number: 'CW-08', version: 1 }],
      waitsFor: [],
    })
    expect(find('vehicle.last.look', [again('RF'), { kind: 'look' }]).waitsFor).toEqual([
      'RF.studs.torque-again',
    ])
  })

  it('is part of the work on a wheel that comes off anyway', () => {
    const works: readonly Work[] = [again('RF'), { kind: 'fit-tire', wheel: 'RF' }, again('LF')]
    expect(keys(works).filter((key) => key === 'RF.studs.torque-again')).toHaveLength(1)
    expect(find('RF.studs.torque-again', works).waitsFor).toEqual(['RF.studs.torque-full'])
    expect(find('LF.pressure.set', works).waitsFor).toEqual(['LF.studs.torque-again'])
  })
})

describe('a comeback', () => {
  const first: readonly Work[] = [
    { kind: 'fit-sensor', wheel: 'RR', valve: 'clamp-in', identity: 'new' },
    { kind: 'relearn' },
    { kind: 'set-pressures' },
  ]

  it('is a look that plans nothing until its cause is known', () => {
    expect(keys([{ kind: 'look' }])).toEqual([])
  })

  it('is then the work that its cause needs, with the keys of that work', () => {
    expect(keys([{ kind: 'look' }, ...first])).toEqual(keys(first))
    const forgotten: readonly Work[] = [{ kind: 'look' }, { kind: 'relearn' }]
    expect(keysAt('RR', forgotten)).toEqual(atTheEnd)
    expect(keys(forgotten)).toContain('vehicle.relearn.done')
    const leaks: readonly Work[] = [
      { kind: 'look' },
      { kind: 'service-stem', wheel: 'RR', valve: 'clamp-in' },
    ]
    expect(keysAt('RR', leaks)).toContain('stem.renew')
    expect(keysAt('LF', leaks)).toEqual(atTheEnd)
  })
})

describe('pressures', () => {
  it('set on a vehicle that learns its tires are followed by its reset; with sensors they are not', () => {
    expect(keys([{ kind: 'set-pressures' }], indirect)).toContain('vehicle.relearn.done')
    expect(keys([{ kind: 'set-pressures' }])).not.toContain('vehicle.relearn.done')
  })
})

const newton = (value: number) => ({ value, unit: 'N·m' }) as const
