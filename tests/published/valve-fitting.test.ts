/**
 * Source: what the trade practices when a wheel sensor is fitted: common practice, no source. Stem nuts of 35 to 106
 * lbf·in were met, stem screws of 12 to 22, cores of 2.5 to 5; at most 40 psi to seat a bead. The sensor maker's, the
 * vehicle maker's and the tire maker's figures govern.
 */
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { noDangers } from '@bayledger/reckoning/job-plan/tire-dangers'
import type { Torque } from '@bayledger/reckoning/quantity'
import { stemTorqueDoubts } from '@bayledger/reckoning/torque/plausible-torque'
import { workCautions } from '@bayledger/wording/en/work-cautions'
import { workCautionWords } from '@bayledger/wording/work-cautions'
import { expect, it } from 'vitest'
import { howOf } from '../../packages/reckoning/test-support/in-words.ts'
import { utilitySheet } from '../../packages/reckoning/test-support/utility-sheet.ts'
import { published } from './published.ts'

const planOf = (valve: 'snap-in' | 'clamp-in') =>
  planJob(
    utilitySheet,
    [{ work: { kind: 'fit-sensor', wheel: 'RR', valve, identity: 'new' }, bundleKey: 'sensor.RR' }],
    1,
    noDangers,
  ).steps
const order = (valve: 'snap-in' | 'clamp-in') => planOf(valve).map(({ stepKey }) => stepKey)
const words = (valve: 'snap-in' | 'clamp-in') =>
  planOf(valve)
    .filter(({ stepKey }) => stepKey === 'RR.sensor.fit')
    .map(howOf)
    .join('')
const unusual = (part: 'stem-nut' | 'stem-screw' | 'valve-core', torque: Torque) =>
  stemTorqueDoubts(part, torque).some(({ code }) => code === 'outside-the-usual')

published({ document: 'How a wheel sensor is fitted', certainty: 'common practice, no source' }, () => {
  it.each([
    ['stem-nut', 35, 'lbf·in'],
    ['stem-nut', 62, 'lbf·in'],
    ['stem-nut', 106, 'lbf·in'],
    ['stem-nut', 4, 'N·m'],
    ['stem-nut', 12, 'N·m'],
    ['stem-screw', 12, 'lbf·in'],
    ['stem-screw', 22, 'lbf·in'],
    ['stem-screw', 1.4, 'N·m'],
    ['stem-screw', 2.5, 'N·m'],
    ['valve-core', 2.5, 'lbf·in'],
    ['valve-core', 5, 'lbf·in'],
    ['valve-core', 0.28, 'N·m'],
    ['valve-core', 0.56, 'N·m'],
  ] as const)('a %s of %d %s is usual', (part, value, unit) => {
    expect(unusual(part, { value, unit })).toBe(false)
  })

  it.each([
    ['stem-nut', 62, 'lbf·ft'],
    ['stem-screw', 12, 'lbf·ft'],
    ['stem-screw', 22, 'N·m'],
    ['valve-core', 4, 'lbf·ft'],
    ['valve-core', 4, 'N·m'],
  ] as const)('a %s of %d %s is doubted', (part, value, unit) => {
    expect(unusual(part, { value, unit })).toBe(true)
  })

  it('a bead is seated at 40 psi or less', () => {
    const seat = planOf('clamp-in').find(({ stepKey }) => stepKey === 'RR.tire.seat')
    const said = seat?.cautions.map((caution) => workCautionWords(workCautions, caution)).join(' ')
    expect(said).toContain('Never over 40 psi to seat a bead')
  })

  it.each([
    ['sensor.program', 'wheel.off'],
    ['tire.open', 'tire.inside'],
    ['tire.inside', 'sensor.fit'],
    ['sensor.fit', 'sensor.read-in-rim'],
    ['sensor.read-in-rim', 'tire.seat'],
    ['tire.seat', 'tire.core'],
    ['tire.core', 'tire.leak'],
    ['tire.leak', 'closing.read'],
  ])('%s comes before %s', (first, then) => {
    const keys = order('clamp-in')
    expect(keys.indexOf(`RR.${first}`)).toBeGreaterThanOrEqual(0)
    expect(keys.indexOf(`RR.${first}`)).toBeLessThan(keys.indexOf(`RR.${then}`))
  })

  it.each([
    ['clamp-in', /without penetrant/],
    ['clamp-in', /New grommet, washer, nut, core and cap/],
    ['clamp-in', /in one pull, holding the body still/],
    ['clamp-in', /nothing on threads or grommet/],
    ['snap-in', /never use it again/],
    ['snap-in', /straight with a stem puller until the shoulder seats/],
    ['snap-in', /in the drop center/],
  ] as const)('the words for %s hold %s', (valve, said) => {
    expect(words(valve)).toMatch(said)
  })
})
