import { describe, expect, it } from 'vitest'
import { doesOf, howOf } from '../../test-support/in-words.ts'
import {
  atTheEnd,
  closed,
  find,
  hub,
  indirect,
  keys,
  keysAt,
  lift,
  onTheRoad,
  standing,
  steps,
} from '../../test-support/planned.ts'
import { utilitySheet as sheet } from '../../test-support/utility-sheet.ts'
import type { Work } from '../estimate.ts'
import { type RoadPosition, roadPositions } from '../wheels.ts'

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
    expect(find('RR.tire.inflate', works).waitsFor).toEqual(['RR.tire.core'])
  })

  it('is brought to the label’s pressure before it is checked for leaks and balanced', () => {
    expect(find('RR.tire.inflate', works)).toMatchObject({
      figure: { kind: 'placard', psi: sheet.placard.rear.psi },
      needs: ['value'],
    })
    expect(find('RR.tire.leak', works).waitsFor).toEqual(['RR.tire.inflate'])
    expect(find('RR.tire.balance', works)).toMatchObject({ needs: ['value'], waitsFor: ['RR.tire.leak'] })
  })

  it('is learned on the proof drive where the vehicle learns by driving, else standing before it', () => {
    expect(find('vehicle.proof.drive', works)).toMatchObject({
      code: 'learning-drive',
      figure: { kind: 'minutes', minutes: 20, of: 'proof-drive' },
    })
    expect(howOf(find('vehicle.proof.drive', works))).toMatch(/Park 20 minutes.*The same drive proves/s)
    expect(find('vehicle.relearn.done', works)).toMatchObject({
      code: 'confirm-learned',
      waitsFor: ['vehicle.proof.drive'],
    })
    const longer = { ...sheet, relearn: sheet.relearn && { ...sheet.relearn, driveMinutes: 30 } }
    expect(find('vehicle.proof.drive', works, longer).figure).toMatchObject({ minutes: 30 })
    expect(find('vehicle.proof.drive', works, standing).code).toBe('proof-drive')
    expect(find('vehicle.relearn.done', works, standing)).toMatchObject({ code: 'relearn' })
    expect(find('vehicle.proof.drive', works, standing).waitsFor).toContain('vehicle.relearn.done')
  })

  it('is followed by the last look before anything moves', () => {
    for (const on of [sheet, standing]) {
      expect(find('vehicle.proof.drive', works, on).waitsFor).toEqual(
        expect.arrayContaining([on === sheet ? 'vehicle.last.look' : 'vehicle.relearn.done']),
      )
      expect(find('vehicle.last.look', works, on).waitsFor).toContain('SP.pressure.set')
    }
    expect(find('vehicle.relearn.done', works, standing).waitsFor).toContain('vehicle.last.look')
  })

  it('shows the sheet’s stem only as the one that was agreed', () => {
    const rubber: readonly Work[] = [{ kind: 'fit-sensor', wheel: 'RR', valve: 'snap-in', identity: 'new' }]
    expect(howOf(find('RR.sensor.match', rubber))).toContain('Stem: the one that was agreed, snap-in.')
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
    for (const wheel of roadPositions) expect(keysAt(wheel, works)).toHaveLength(19)
    expect(keys(works).filter((key) => key.startsWith('vehicle.'))).toEqual([
      ...lift,
      'vehicle.last.look',
      ...onTheRoad,
    ])
    expect(keys(works)).toHaveLength(85)
  })

  it('takes four off, opens four, puts four on, lowers once and goes round four', () => {
    const works: readonly Work[] = roadPositions.map((wheel) => ({
      kind: 'service-stem',
      wheel,
      valve: 'clamp-in',
    }))
    const codes = steps(works).map(({ code }) => code)
    expect(codes.slice(0, 5)).toEqual(['lift-vehicle', ...roadPositions.map(() => 'take-wheel-off')])
    const lowered = codes.indexOf('lower-to-touching')
    expect(codes.slice(lowered - 4, lowered)).toEqual(roadPositions.map(() => 'put-wheel-on'))
    expect(codes.slice(lowered + 1, lowered + 17)).toEqual([
      ...roadPositions.flatMap(() => ['torque-studs', 'torque-studs', 'torque-studs']),
      ...roadPositions.map(() => 'check-torque'),
    ])
    expect(codes[lowered + 17]).toBe('lower-fully')
    expect(find('vehicle.lift.up', works)).toMatchObject({ values: { liftNotes: sheet.liftNotes } })
    expect(howOf(find('vehicle.lift.up', works))).toContain(sheet.liftNotes)
  })
})

describe('a leak', () => {
  const works: readonly Work[] = [
    { kind: 'find-leak', wheel: 'LF' },
    { kind: 'service-stem', wheel: 'LF', valve: 'clamp-in' },
  ]

  it('is found, its tire seen inside, judged, and its stem parts renewed', () => {
    expect(keysAt('LF', works)).toEqual([
      'leak.find',
      'wheel.off',
      'tire.open',
      'tire.inside',
      'leak.judge',
      'stem.renew',
      'sensor.read-in-rim',
      ...closed,
      ...hub,
      ...atTheEnd,
    ])
    expect(find('LF.leak.judge', works).waitsFor).toEqual(['LF.leak.find', 'LF.tire.inside'])
    expect(find('LF.stem.renew', works).figure).toMatchObject({ torque: { value: 62, unit: 'lbf·in' } })
  })

  it('has the repair of a hole in its plan only where that is authorized, after the look inside and before the seat', () => {
    const withRepair: readonly Work[] = [...works, { kind: 'repair-puncture', wheel: 'LF' }]
    expect(keysAt('LF', works)).not.toContain('leak.repair')
    expect(find('LF.leak.repair', withRepair).waitsFor).toEqual(['LF.leak.judge'])
    expect(find('LF.stem.renew', withRepair).waitsFor).toEqual(find('LF.stem.renew', works).waitsFor)
    expect(keysAt('LF', withRepair)).toEqual(
      keysAt('LF', works).flatMap((key) => (key === 'leak.judge' ? [key, 'leak.repair'] : [key])),
    )
    const alone: readonly Work[] = [{ kind: 'repair-puncture', wheel: 'LF' }]
    expect(find('LF.leak.repair', alone).waitsFor).toEqual(['LF.tire.inside'])
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

  it('leaves no sensor to be read at the end, unless a sensor goes in as well', () => {
    const works: readonly Work[] = [{ kind: 'service-stem', wheel: 'LR', valve: 'plain' }]
    expect(keysAt('LR', works)).not.toContain('closing.read')
    expect(keysAt('RR', works)).toContain('closing.read')
    const both: readonly Work[] = [
      ...works,
      { kind: 'fit-sensor', wheel: 'LR', valve: 'snap-in', identity: 'new' },
    ]
    expect(keysAt('LR', both)).toContain('closing.read')
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

  it('whose stem parts were not authorized get their old valve core back', () => {
    expect(doesOf(find('RF.tire.core', works))).toBe('Torque the new valve core')
    const alone: readonly Work[] = [{ kind: 'fit-tire', wheel: 'RF' }]
    expect(doesOf(find('RF.tire.core', alone))).toBe('Put the valve core back, torque it')
    expect(find('RF.tire.core', alone).figure).toEqual(find('RF.tire.core', works).figure)
  })

  it('need no relearn where each sensor stays, and a reset where there is none', () => {
    expect(keys(works)).not.toContain('vehicle.relearn.done')
    expect(keys([{ kind: 'fit-tire', wheel: 'LF' }], indirect)).toContain('vehicle.relearn.done')
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
    expect(find('LF.pressure.set', works).waitsFor).toEqual(['LF.studs.torque-again', 'vehicle.lift.down'])
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
