import { describe, expect, it } from 'vitest'
import { howOf } from '../../test-support/in-words.ts'
import { standing } from '../../test-support/planned.ts'
import { workCautions } from '../cautions/work-cautions.ts'
import type { Work } from '../estimate.ts'
import { planJob } from './plan-job.ts'
import { noDangers } from './tire-dangers.ts'

const works: readonly Work[] = [
  { kind: 'fit-sensor', wheel: 'RR', valve: 'clamp-in', identity: 'new' },
  { kind: 'find-leak', wheel: 'LF' },
  { kind: 'repair-puncture', wheel: 'LF' },
  { kind: 'service-stem', wheel: 'LF', valve: 'clamp-in' },
  { kind: 'relearn' },
  { kind: 'set-pressures' },
]
const { steps } = planJob(
  standing,
  works.map((work) => ({ work, bundleKey: work.kind })),
  1,
  noDangers,
)

/** What the entry that closes a step must hold, the caution that it shows, and the source of its figure. */
const table = [
  ['leak.find', 'value', null, null],
  ['sensor.match', 'value', null, 'frequency'],
  ['sensor.program', 'value', null, 'frequency'],
  ['lift.up', '', 'lift', null],
  ['lift.touching', '', 'lower', null],
  ['lift.down', '', 'lower', null],
  ['wheel.off', 'value', null, null],
  ['tire.open', '', 'open', null],
  ['tire.inside', 'value photo', null, null],
  ['leak.judge', 'value photo', 'repair', null],
  ['leak.repair', 'value', 'repair', null],
  ['sensor.fit', 'value photo', 'stem', 'torque'],
  ['stem.renew', 'value photo', 'stem', 'torque'],
  ['sensor.read-in-rim', 'value', null, null],
  ['tire.seat', '', 'seat', null],
  ['tire.core', 'value', 'stem', 'torque'],
  ['tire.inflate', 'value', 'inflate', 'placard'],
  ['tire.leak', 'value', null, null],
  ['tire.balance', 'value', null, null],
  ['wheel.on', 'value', null, null],
  ['studs.torque-half', 'value', 'torque', 'torque'],
  ['studs.torque-full', 'value', 'torque', 'torque'],
  ['studs.torque-again', 'value', 'torque', 'torque'],
  ['studs.second-check', 'value second-person', 'torque', 'torque'],
  ['pressure.set', 'value', 'pressure', 'placard'],
  ['relearn.done', 'value', null, 'minutes'],
  ['closing.read', 'value', null, null],
  ['closing.module', 'value', null, null],
  ['proof.drive', 'value', 'road', 'minutes'],
  ['closing.light', 'value', null, null],
  ['last.look', '', null, null],
] as const

const nameOf = (stepKey: string): string => stepKey.slice(stepKey.indexOf('.') + 1)

describe('a step', () => {
  it.each(table)('%s needs "%s", shows the caution %s and a figure of %s', (name, needs, caution, figure) => {
    const named = steps.filter(({ stepKey }) => nameOf(stepKey) === name)
    expect(named.length).toBeGreaterThan(0)
    for (const step of named) {
      expect(step.needs.join(' ')).toBe(needs)
      expect(step.cautions).toEqual(caution === null ? [] : [workCautions[caution]])
      expect(step.figure?.kind ?? null).toBe(figure)
    }
  })

  it('is one of these in a job with a new sensor and a leak', () => {
    expect([...new Set(steps.map(({ stepKey }) => nameOf(stepKey)))].sort()).toEqual(
      table.map(([name]) => name).sort(),
    )
  })

  it('at a wheel says the order of tightening and who checks', () => {
    const how = (key: string): string =>
      steps
        .filter(({ stepKey }) => stepKey === key)
        .map(howOf)
        .join('')
    expect(how('RR.studs.torque-full')).toMatch(/\b1(\D+\d){2,}/)
    for (const key of [
      'wheel.off',
      'wheel.on',
      'studs.torque-half',
      'studs.torque-again',
      'studs.second-check',
    ])
      expect(how(`RR.${key}`).length, key).toBeGreaterThan(20)
  })
})
