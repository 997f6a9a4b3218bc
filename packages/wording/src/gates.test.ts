import type { GateCode, GateValues } from '@bayledger/ledger/questions/gate-reason'
import { describe, expect, it } from 'vitest'
import { faultOf } from '../test-support/plain-sentence.ts'
import { english } from './en/english.ts'
import { gateWords } from './gates.ts'

const step = {
  stepKey: 'RR.wheel.off',
  code: 'take-wheel-off',
  wheel: 'RR',
  round: null,
  values: {},
} as const

/** Every case of every reason. */
const cases: { readonly [Code in GateCode]: readonly GateValues[Code][] } = {
  sheet: [{}],
  surroundings: [{}],
  'warning-light': [{}],
  gauge: [{}],
  sensor: [{}],
  tire: [{}],
  'control-module': [{}],
  'spare-not-on': [{}],
  'wheel-off': [{}],
  'wheel-untorqued': [{}],
  'wheel-unchecked': [{}],
  'wheel-parked': [
    { what: 'stud', waitsFor: 'repair' },
    { what: 'run-low-inside', waitsFor: 'answer' },
    { what: 'bulge', waitsFor: 'refused' },
  ],
  'stop-open': [
    { finding: 'stem-leaking', keeps: 'here' },
    { finding: 'run-low-damage-possible', keeps: 'off-the-road' },
    { finding: 'tire-unsafe', keeps: 'refused' },
  ],
  'device-clock-doubtful': [
    { writtenAt: '1970-01-01T00:00:00.000Z', receivedAt: '2026-01-12T16:40:00.000Z' },
  ],
  'drive-minutes-doubtful': [
    { typed: 22, clock: 3, by: 'timed' },
    { typed: 22, clock: 0, by: 'entries' },
    { typed: 22, clock: 14, by: 'clocks' },
  ],
  'wrench-doubtful': [
    { why: 'day', wrench: 'TW-1', dueOn: '2026-01-01' },
    { why: 'cycles', wrench: 'TW-1', cycles: 5_001, dueAt: 5_000 },
    { why: 'quarantined', wrench: 'TW-1' },
  ],
  'heard-late': [
    { refusal: 'STEP_ALREADY_CLOSED' },
    { refusal: 'STEP_NOT_AUTHORIZED' },
    { refusal: 'FIGURE_UNVERIFIED' },
  ],
  'findings-unconfirmed': [{}],
  'estimate-missing': [{}],
  'estimate-unanswered': [
    { bundle: { bundleKey: 'sensor', title: 'sensor', wheels: ['RR'], asWritten: null } },
  ],
  'step-open': [{ step }],
  'sensor-broken': [{}],
  'recorded-twice': [
    { fact: 'gauge', phase: 'arrival' },
    { fact: 'control-module', phase: 'closing' },
  ],
}

describe('the reason for a shut gate', () => {
  for (const [code, values] of Object.entries(cases) as [GateCode, readonly GateValues[GateCode][]][])
    for (const wheel of ['LF', null] as const)
      it.each(values)(`${code} at ${wheel} of %j is a plain sentence`, (of) => {
        expect(faultOf(gateWords(english.gates, { code, wheel, values: of }))).toBeNull()
      })

  it('keeps the words of a hold that an older ledger wrote in words', () => {
    const values = { asWritten: 'The wrench TW-1 is quarantined. Take another one.' }
    expect(gateWords(english.gates, { code: 'wrench-doubtful', wheel: null, values })).toBe(values.asWritten)
  })
})
