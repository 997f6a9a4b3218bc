import { describe, expect, it } from 'vitest'
import { howOf } from '../../test-support/in-words.ts'
import { utilitySheet as sheet, verifiedSource as source } from '../../test-support/utility-sheet.ts'
import type { Work } from '../estimate.ts'
import type { SpecificationSheet } from '../sheet.ts'
import { JobPlan, type PlannedStep } from '../step.ts'
import { planJob } from './plan-job.ts'
import { noDangers } from './tire-dangers.ts'

const plan = (works: readonly Work[], on: SpecificationSheet = sheet) =>
  planJob(
    on,
    works.map((work) => ({ work, bundleKey: 'one' })),
    1,
    noDangers,
  )
const first = ([step]: readonly PlannedStep[]): PlannedStep => {
  if (!step) throw new Error('the plan has no step')
  return step
}
const oneSensor: readonly Work[] = [
  { kind: 'fit-sensor', wheel: 'RR', valve: 'clamp-in', identity: 'new' },
  { kind: 'relearn' },
]

describe('a job plan', () => {
  it('for one sensor touches that wheel alone and sets every pressure', () => {
    const { steps } = plan(oneSensor)
    expect(JobPlan.safeParse(plan(oneSensor)).success).toBe(true)
    expect(steps.filter(({ closedBy }) => closedBy === 'wheel.removed').map(({ wheel }) => wheel)).toEqual([
      'RR',
    ])
    expect(steps.filter(({ closedBy }) => closedBy === 'pressure.set').map(({ wheel }) => wheel)).toEqual([
      'LF',
      'RF',
      'RR',
      'LR',
      'SP',
    ])
    expect(steps.map(({ stepKey }) => stepKey).slice(0, 3)).toEqual([
      'RR.sensor.match',
      'RR.sensor.program',
      'vehicle.lift.up',
    ])
  })

  it('names each step once and lets each wait only for steps that come before it', () => {
    const { steps } = plan([
      ...oneSensor,
      { kind: 'service-stem', wheel: 'LF', valve: 'clamp-in' },
      { kind: 'set-pressures' },
    ])
    const seen = new Set<string>()
    for (const step of steps) {
      expect(seen.has(step.stepKey)).toBe(false)
      for (const key of step.waitsFor) expect(seen, `${step.stepKey} waits for ${key}`).toContain(key)
      seen.add(step.stepKey)
    }
  })

  it('puts the second check of every wheel that came off before any road movement', () => {
    const { steps } = plan(oneSensor)
    expect(steps.find(({ closedBy }) => closedBy === 'drive.done')?.waitsFor).toContain(
      'RR.studs.second-check',
    )
  })

  it('for pressures only takes no wheel off and still proves the light', () => {
    const kinds = new Set(plan([{ kind: 'set-pressures' }]).steps.map(({ closedBy }) => closedBy))
    expect(kinds).toEqual(
      new Set([
        'pressure.set',
        'wheel.checked',
        'module.read',
        'drive.done',
        'telltale.observed',
        'step.closed',
      ]),
    )
  })

  it('for a look only has no steps: the look itself is the arrival check', () => {
    expect(plan([{ kind: 'look' }]).steps).toEqual([])
  })

  it('keeps every torque round shut until a second person confirms an unverified figure', () => {
    const unverified = {
      ...sheet,
      sources: { ...sheet.sources, studTorque: { ...source, verifiedBy: null } },
    }
    const { steps } = plan(oneSensor, unverified)
    expect(steps[0]?.stepKey).toBe('vehicle.confirm.stud-torque')
    expect(howOf(first(steps))).toContain('The sheet has 100 lbf·ft (136 N·m) for M14×1.5.')
    const slipped = {
      ...unverified,
      studs: { ...sheet.studs, torque: { value: 55, unit: 'lbf·ft' } as const },
    }
    expect(howOf(first(plan(oneSensor, slipped).steps))).toContain('Read the source again.')
    const rounds = steps.filter(
      ({ closedBy }) => closedBy === 'studs.torqued' || closedBy === 'torque.checked',
    )
    expect(rounds).toHaveLength(4)
    for (const round of rounds) {
      expect(round.unverified).toBe('studTorque')
      expect(round.waitsFor).toContain('vehicle.confirm.stud-torque')
    }
  })

  it('draws no sensor by a frequency whose source nobody named', () => {
    const { steps } = plan(oneSensor, { ...sheet, sources: { ...sheet.sources, frequency: null } })
    expect(steps.find(({ closedBy }) => closedBy === 'part.drawn')?.waitsFor).toContain(
      'vehicle.confirm.frequency',
    )
  })

  it('shows the sheet’s own torque, unit and source on each round', () => {
    const round = plan(oneSensor).steps.find(({ stepKey }) => stepKey === 'RR.studs.torque-full')
    expect(round?.figure).toEqual({
      kind: 'torque',
      torque: { value: 100, unit: 'lbf·ft' },
      source: { from: 'sheet', reference: 'manual p. 12' },
    })
  })

  it('shows about half of it on the first round, with whose figure it is half of', () => {
    const round = plan(oneSensor).steps.find(({ stepKey }) => stepKey === 'RR.studs.torque-half')
    expect(round?.figure).toEqual({
      kind: 'torque',
      torque: { value: 50, unit: 'lbf·ft' },
      source: { from: 'half-of-sheet', reference: 'manual p. 12' },
    })
  })

  it('with nothing on the sheet about learning still has the step, and guesses no procedure', () => {
    const [relearn] = plan(oneSensor, { ...sheet, relearn: null }).steps.filter(
      ({ closedBy }) => closedBy === 'relearn.done',
    )
    expect(relearn && howOf(relearn)).toContain("vehicle maker's own")
    expect(relearn?.waitsFor).toContain('RR.studs.second-check')
  })

  it('names the core’s torque where the tire is closed', () => {
    const core = plan(oneSensor).steps.find(({ stepKey }) => stepKey === 'RR.tire.core')
    expect(core?.figure).toEqual({
      kind: 'torque',
      torque: { value: 4, unit: 'lbf·in' },
      source: { from: 'valve-core' },
    })
    expect(core?.waitsFor).toEqual(['RR.tire.seat'])
  })

  it('torques nothing on a spare, which is on no hub', () => {
    const { steps } = plan([{ kind: 'service-stem', wheel: 'SP', valve: 'clamp-in' }])
    expect(steps.some(({ closedBy }) => closedBy === 'studs.torqued' || closedBy === 'wheel.removed')).toBe(
      false,
    )
  })
})
