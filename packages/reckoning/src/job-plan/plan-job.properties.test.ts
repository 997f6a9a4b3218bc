import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  anyAuthorized,
  anyAuthorizedOrSpare,
  anyDangers,
  anySheet,
  everythingBefore,
  plans,
  settings,
  shownFigure,
} from '../../test-support/any-plan.ts'
import { issuedWorkCautions } from '../cautions/work-cautions.ts'
import type { Work } from '../estimate.ts'
import { relearnOf, SafetyFigure, unverifiedFigures } from '../sheet.ts'
import { JobPlan, type PlannedStep } from '../step.ts'
import { readingOrder, roadPositions, type WheelPosition } from '../wheels.ts'
import { planJob } from './plan-job.ts'
import { confirmationKey } from './step-of.ts'

/** Works after which the vehicle's tires, pressures or sensors are not what they were. */
const changing: readonly Work['kind'][] = [
  'fit-sensor',
  'service-stem',
  'find-leak',
  'repair-puncture',
  'fit-tire',
  'swap-wheels',
  'rotate',
  'set-pressures',
]

/** What is done to a tire that is opened, in the trade's order. */
const inOpenTire = [
  'tire.purge',
  'tire.open',
  'tire.inside',
  'leak.judge',
  'leak.repair',
  'sensor.fit',
  'stem.renew',
  'sensor.read-in-rim',
  'tire.seat',
  'tire.core',
  'tire.inflate',
  'tire.leak',
  'tire.balance',
] as const

describe('any job plan', () => {
  it('is well formed: keys once, and each step waits only for steps that come before it', () => {
    fc.assert(
      fc.property(anySheet, anyAuthorizedOrSpare, anyDangers, (sheet, authorized, dangers) => {
        const plan = planJob(sheet, authorized, 1, dangers)
        expect(JobPlan.safeParse(plan).success).toBe(true)
        const seen = new Set<string>()
        const faults: string[] = []
        for (const { stepKey, waitsFor } of plan.steps) {
          if (seen.has(stepKey)) faults.push(`${stepKey} comes twice`)
          if (new Set(waitsFor).size !== waitsFor.length) faults.push(`${stepKey} waits twice for one`)
          for (const key of waitsFor) if (!seen.has(key)) faults.push(`${stepKey} waits for ${key}`)
          seen.add(stepKey)
        }
        expect(faults).toEqual([])
      }),
      settings,
    )
  })

  it('shows an unverified figure only behind its confirmation by a second person', () => {
    let held = 0
    plans((steps, sheet) => {
      const before = everythingBefore(steps)
      const unverified = unverifiedFigures(sheet)
      for (const step of steps) {
        const shown = shownFigure(step) ?? step.unverified
        if (shown === null || !unverified.includes(shown)) continue
        held += 1
        const key = confirmationKey(shown)
        expect(before.get(step.stepKey)).toContain(key)
        expect(step.unverified).toBe(shown)
        const confirmation = steps.find(({ stepKey }) => stepKey === key)
        expect(confirmation).toMatchObject({ closedBy: 'figure.confirmed', waitsFor: [] })
        expect(confirmation?.needs).toContain('second-person')
      }
    })
    expect(held).toBeGreaterThan(1_000)
  })

  it('confirms nothing that is verified, and draws no sensor by an unconfirmed frequency', () => {
    plans((steps, sheet) => {
      const unverified = unverifiedFigures(sheet)
      for (const figure of SafetyFigure.options)
        if (!unverified.includes(figure))
          expect(steps.some(({ stepKey }) => stepKey === confirmationKey(figure))).toBe(false)
      const before = everythingBefore(steps)
      for (const { stepKey, closedBy } of steps)
        if (['part.drawn', 'sensor.programmed', 'sensor.fitted'].includes(closedBy))
          expect(before.get(stepKey)?.has(confirmationKey('frequency'))).toBe(
            unverified.includes('frequency'),
          )
    })
  })

  it('lets no vehicle onto the road before the second check of each wheel that came off', () => {
    let roads = 0
    plans((steps, sheet) => {
      const before = everythingBefore(steps)
      const off = steps.flatMap(({ closedBy, wheel }) =>
        closedBy === 'wheel.removed' && wheel ? [wheel] : [],
      )
      const mayDrive = (step: PlannedStep) =>
        step.closedBy === 'drive.done' ||
        (step.closedBy === 'relearn.done' && (relearnOf(sheet)?.method ?? 'automatic') === 'automatic')
      for (const step of [...steps.filter(mayDrive), ...steps.slice(-1)])
        for (const wheel of off) {
          roads += 1
          expect(before.get(step.stepKey)).toContain(`${wheel}.studs.second-check`)
        }
      for (const wheel of off) {
        const check = steps.find(({ stepKey }) => stepKey === `${wheel}.studs.second-check`)
        expect(check?.needs).toContain('second-person')
        for (const key of [
          'wheel.off',
          'wheel.on',
          'studs.torque-half',
          'studs.torque-full',
          'studs.torque-again',
        ])
          expect(before.get(`${wheel}.studs.second-check`)).toContain(`${wheel}.${key}`)
      }
    })
    expect(roads).toBeGreaterThan(500)
  })

  it('sets a tire’s pressure and drives only when its wheel is in its final place', () => {
    plans((steps) => {
      const before = everythingBefore(steps)
      const drive = steps.find(({ closedBy }) => closedBy === 'drive.done')
      for (const { stepKey, wheel, closedBy, code } of steps) {
        if (closedBy === 'pressure.set' && steps.some(({ stepKey: on }) => on === `${wheel}.wheel.on`))
          expect(before.get(stepKey)).toContain(`${wheel}.studs.torque-again`)
        if (drive && (closedBy === 'pressure.set' || code === 'relearn' || code === 'last-look'))
          expect(before.get(drive.stepKey)).toContain(stepKey)
      }
    })
  })

  it('works on no wheel that nothing was authorized for: it is gauged, set and read again', () => {
    let untouched = 0
    plans((steps, sheet, works) => {
      const named = works.flatMap((work) => ('wheel' in work ? [work.wheel] : []))
      if (works.some(({ kind }) => kind === 'rotate' || kind === 'swap-wheels')) return
      for (const { stepKey, wheel } of steps) {
        if (wheel === null || named.includes(wheel)) continue
        untouched += 1
        expect(['pressure.set', 'closing.read']).toContain(stepKey.slice(3))
      }
      for (const wheel of named)
        if (wheel !== 'SP' || sheet.spare !== 'none')
          expect(steps.some((step) => step.wheel === wheel)).toBe(true)
    })
    expect(untouched).toBeGreaterThan(400)
  })

  it('takes off exactly the road wheels whose tire is opened or which change their place', () => {
    let off = 0
    plans((steps, _sheet, works) => {
      if (works.some(({ kind }) => kind === 'rotate')) return
      const all = works.some(({ kind }) => kind === 'swap-wheels')
      const opened = works.flatMap((work) =>
        'wheel' in work && work.kind !== 'torque-again' ? [work.wheel] : [],
      )
      const removed = steps.flatMap(({ closedBy, wheel }) => (closedBy === 'wheel.removed' ? [wheel] : []))
      off += removed.length
      expect(removed).toEqual(roadPositions.filter((wheel) => all || opened.includes(wheel)))
    })
    expect(off).toBeGreaterThan(200)
  })

  it('after new tires, other wheels, a rotation or a pressure sets, learns or reads again, and proves', () => {
    let proven = 0
    plans((steps, sheet, works) => {
      if (!works.some(({ kind }) => changing.includes(kind))) return
      proven += 1
      const named = (closedBy: PlannedStep['closedBy']) => steps.filter((step) => step.closedBy === closedBy)
      const wheels = named('pressure.set').map(({ wheel }) => wheel)
      for (const wheel of roadPositions) expect(wheels).toContain(wheel)
      for (const kind of ['drive.done', 'telltale.observed'] as const) expect(named(kind)).toHaveLength(1)
      if (sheet.system === 'indirect') expect(named('relearn.done')).toHaveLength(1)
      if (sheet.system !== 'direct') return
      expect(named('module.read')).toHaveLength(1)
      const read = named('wheel.checked').map(({ wheel }) => wheel)
      const hasPlainStem = (at: WheelPosition): boolean =>
        works.some((work) => work.kind === 'service-stem' && work.wheel === at && work.valve === 'plain') &&
        !works.some((work) => work.kind === 'fit-sensor' && work.wheel === at)
      const monitored: readonly WheelPosition[] = sheet.spareMonitored ? readingOrder : roadPositions
      expect(read).toEqual(monitored.filter((at) => !hasPlainStem(at)))
      const moves = works.some(({ kind }) => kind === 'swap-wheels' || kind === 'fit-sensor')
      if (moves || steps.some(({ comesFrom }) => comesFrom)) expect(named('relearn.done')).toHaveLength(1)
    })
    expect(proven).toBeGreaterThan(200)
  })

  it('opens a tire in the order of the trade: what was read before, the look inside, the leak check at the end', () => {
    let opened = 0
    plans((steps) => {
      const before = everythingBefore(steps)
      for (const { wheel } of steps.filter(({ stepKey }) => stepKey.endsWith('.tire.open'))) {
        opened += 1
        const order = steps
          .map(({ stepKey }) => stepKey)
          .filter((key) => inOpenTire.some((name) => key === `${wheel}.${name}`))
        const faults = order.flatMap((key, at) =>
          key.includes('.tire.') || key.endsWith('.read-in-rim')
            ? order.slice(0, at).flatMap((earlier) => (before.get(key)?.has(earlier) ? [] : [[key, earlier]]))
            : [],
        )
        expect(faults, 'steps that do not wait for an earlier one').toEqual([])
        expect(order.filter((key) => key !== `${wheel}.tire.purge`).slice(0, 2)).toEqual([
          `${wheel}.tire.open`,
          `${wheel}.tire.inside`,
        ])
      }
    })
    expect(opened).toBeGreaterThan(300)
  })

  it('brings each moved wheel to one place, once it is off', () => {
    plans((steps) => {
      const before = everythingBefore(steps)
      const moved = steps.filter(({ comesFrom }) => comesFrom !== undefined)
      expect(moved.map(({ comesFrom }) => comesFrom).sort()).toEqual(moved.map(({ wheel: to }) => to).sort())
      for (const { stepKey, comesFrom } of moved)
        expect(before.get(stepKey)).toContain(comesFrom === 'SP' ? 'SP.wheel.out' : `${comesFrom}.wheel.off`)
    })
  })

  it('follows from the set of works, whatever their order and however often each is named', () => {
    fc.assert(
      fc.property(
        anySheet,
        anyAuthorized.chain((works) =>
          fc.tuple(
            fc.constant(works),
            fc.shuffledSubarray([...works, ...works], { minLength: works.length * 2 }),
          ),
        ),
        anyDangers,
        (sheet, [works, shuffled], dangers) => {
          expect(planJob(sheet, shuffled, 1, dangers)).toEqual(planJob(sheet, works, 1, dangers))
        },
      ),
      settings,
    )
  })

  it('names a bundle that was authorized, except for moving the lift, and only cautions that there are', () => {
    fc.assert(
      fc.property(anySheet, anyAuthorized, anyDangers, (sheet, authorized, dangers) => {
        const bundles = new Set<string>(authorized.map(({ bundleKey }) => bundleKey))
        for (const { bundleKey, cautions, code } of planJob(sheet, authorized, 1, dangers).steps) {
          expect(/^(lift|lower)-/.test(code) ? bundleKey === null : bundles.has(bundleKey ?? '')).toBe(true)
          for (const { number, version } of cautions) expect(issuedWorkCautions[number]).toContain(version)
        }
      }),
      settings,
    )
  })
})
