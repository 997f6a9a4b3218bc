import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Evidence, type LightBehavior, LightBehavior as Lights } from '../../evidence/evidence-schema.ts'
import { anyEvidence, thousandRuns } from '../cases/generated-evidence.test-support.ts'
import { caseNamed } from '../cases/worked-cases.test-support.ts'
import { suppose } from '../checks/suppose.ts'
import { contradictionsOf } from '../contradictions.ts'
import type { ContradictionCode } from '../diagnosis.ts'
import { judge } from '../engine/judge.ts'
import { predictTelltale, type TelltaleState } from './predict-telltale.ts'

/** What a report says of the light as it is now; one that comes and goes, or that never stops flashing, says neither. */
const reportedState = (behavior: LightBehavior | null | undefined): TelltaleState | null => {
  if (behavior === 'off' || behavior === 'solid') return behavior
  return behavior === 'flash-then-solid' ? 'flash' : null
}

/** The contradictions between the light and everything else. */
const ofTheLight: ReadonlySet<ContradictionCode> = new Set<ContradictionCode>([
  ...(['light-against-evidence', 'light-off-tire-low', 'light-on-tires-right'] as const),
  ...(['fault-not-flashed', 'lamp-dark-yet-lit'] as const),
])

const voiced = (evidence: Evidence): ContradictionCode[] =>
  contradictionsOf(judge(evidence)).flatMap(({ code }) => (ofTheLight.has(code) ? [code] : []))

/** Generated evidence under each light that may have been seen, so that many reports are wrong. */
const underAnyLight: fc.Arbitrary<Evidence> = fc
  .tuple(
    anyEvidence,
    fc.constantFrom(...Lights.options),
    fc.constantFrom('lights', 'lights', 'lights', 'dark', null),
  )
  .map(([evidence, behavior, lampCheck]) =>
    suppose(evidence, { 'light.behavior': behavior, 'light.lampCheck': lampCheck }),
  )

describe('the light that the regulation requires, held against the light that was seen', () => {
  it('where they differ, a contradiction is voiced', () => {
    const told = new Map<ContradictionCode, number>()
    fc.assert(
      fc.property(underAnyLight, (evidence) => {
        const { allows } = predictTelltale(evidence)
        const seen = reportedState(evidence.light?.behavior)
        if (seen === null || allows.includes(seen)) return
        const codes = voiced(evidence)
        expect(codes, `may be ${allows.join(' or ')}, was ${seen}`).not.toEqual([])
        for (const code of codes) told.set(code, (told.get(code) ?? 0) + 1)
      }),
      thousandRuns,
    )
    // Each of them was needed, and not once only.
    for (const code of ofTheLight) expect(told.get(code) ?? 0, code).toBeGreaterThan(5)
  })

  it('where the one state that is left was seen, none is voiced', () => {
    let agreed = 0
    fc.assert(
      fc.property(underAnyLight, (evidence) => {
        if (evidence.light?.lampCheck === 'dark') return
        const { state } = predictTelltale(evidence)
        if (state === 'undetermined' || state !== reportedState(evidence.light?.behavior)) return
        agreed += 1
        expect(voiced(evidence), state).toEqual([])
      }),
      thousandRuns,
    )
    expect(agreed).toBeGreaterThan(50)
  })
})

describe('the light that the regulation requires', () => {
  const changed = (name: string, values: Record<string, unknown> = {}) =>
    predictTelltale(suppose(caseNamed(name).evidence, values))

  it('is solid for one low tire and for a low spare with a sensor', () => {
    expect(changed('K01').state).toBe('solid')
    expect(changed('K27').state).toBe('solid')
  })

  it('is a flash for a sensor that cannot be heard, whatever the tires hold', () => {
    for (const name of ['K02', 'K15', 'K18', 'K43', 'K50', 'K54'])
      expect(changed(name).state, name).toBe('flash')
  })

  it('is dark where every tire is clear and every sensor is heard, and where the lamp cannot light', () => {
    for (const name of ['K08', 'K10', 'K24', 'K42', 'K49', 'K31'])
      expect(changed(name).state, name).toBe('off')
  })

  it('may be lit over tires that are low only cold, and is lit over one that leaks among cold ones', () => {
    expect(changed('T01').allows).toContain('solid')
    expect(changed('T02').state).toBe('solid')
  })

  it('is a flash for a silent wheel, whatever was rotated beside it, and not for IDs at exchanged places', () => {
    expect(changed('T08').state).toBe('flash')
    expect(changed('T11').state).toBe('flash')
    expect(changed('T07').allows).not.toContain('flash')
  })

  it('is not known of a low tire whose sensor does not follow, and does not hear an unmonitored spare', () => {
    expect(changed('T12').allows).toContain('off')
    expect(changed('T09').state).toBe('off')
  })

  // 49 CFR 571.138 S4.2(a): "equal to or less than ... 25 percent below" (read): of 35 psi that is 26.25 psi.
  it.each([
    [26.2, ['solid']],
    [26.3, ['off', 'solid']],
    [29.2, ['off', 'solid']],
    [29.3, ['off']],
  ])('with %d psi of 35 it is %j', (gauge, allows) => {
    const both = { 'wheels.LF.gauge': gauge, 'wheels.LF.sensorPressure': gauge }
    expect(changed('K01', both).allows).toEqual(allows)
  })

  it.each([
    ['a vehicle that monitors nothing', { 'vehicle.system': 'none' }],
    ['a system that nobody knows', { 'vehicle.system': 'unknown' }],
    ['a vehicle that was serviced today', { 'events.serviced-today': {} }],
  ])('is not known of %s', (_title, values) => {
    expect(changed('K24', values)).toEqual({ state: 'undetermined', allows: ['off', 'solid', 'flash'] })
  })

  it('is known again after 20 minutes of driving', () => {
    const driven = (minutes: number) =>
      changed('K24', { 'events.serviced-today': {}, 'surroundings.minutesDriven': minutes }).state
    expect([driven(19), driven(20)]).toEqual(['undetermined', 'off'])
  })

  it('leaves an indirect system its reset, but no darkness over a low tire', () => {
    expect(changed('K21').allows).toEqual(['off', 'solid', 'flash'])
    expect(changed('K22').allows).toEqual(['solid', 'flash'])
  })

  it.each([
    ['wheels.LF.gauge', null, ['off', 'solid']],
    ['wheels.LF.sensorPressure', 27, ['off', 'solid']],
    ['vehicle.placard.verified', false, ['off', 'solid']],
    ['surroundings.overnightLow', -20, ['off', 'solid']],
    ['events.moved-since-reading', {}, ['off', 'solid']],
    ['wheels.LF.battery', 'low', ['off', 'flash']],
    ['wheels.LF.id', null, ['off', 'flash']],
    ['wheels.LF.learnRefusals', 1, ['off', 'flash']],
    ['wheels.LF.followsPressure', false, ['off', 'flash']],
    ['controlModule.codes', null, ['off', 'flash']],
    ['controlModule.codes', [{ class: 'no-signal', wheel: 'LF' }], ['off', 'flash']],
    ['controlModule.ids.SP', 'ABCDEF', ['off', 'flash']],
    ['vehicle.spareMonitored', null, ['off', 'flash']],
  ])('of a sound vehicle is no longer known with %s %j', (field, value, allows) => {
    expect(changed('K24', { [field]: value }).allows).toEqual(allows)
  })
})
