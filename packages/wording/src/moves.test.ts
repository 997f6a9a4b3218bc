import type { MoveCode, MoveValues } from '@bayledger/ledger/questions/move'
import { describe, expect, it } from 'vitest'
import { faultOf } from '../test-support/plain-sentence.ts'
import { english } from './en/english.ts'
import { moveWords } from './moves.ts'

const step = {
  stepKey: 'RR.wheel.off',
  code: 'take-wheel-off',
  wheel: 'RR',
  round: null,
  values: {},
} as const

/** Every case of every move. */
const cases: { readonly [Code in MoveCode]: readonly MoveValues[Code][] } = {
  finished: [{}],
  'torque-check': [{ step: null }, { step }],
  'wheel-off': [{}],
  'wheel-untorqued': [{}],
  'wheel-parked': [
    { what: 'stud', waitsFor: 'answer' },
    { what: 'other', waitsFor: 'answer' },
  ],
  'stop-untold': [
    { finding: 'stem-leaking', wheels: ['LF'] },
    { finding: 'run-low-damage-possible', wheels: [] },
  ],
  'sensor-broken': [{}],
  wait: [
    { reason: 'cooling-down' },
    { reason: 'customer-returns' },
    { reason: 'weather' },
    { reason: 'part' },
    { reason: 'trial-drive' },
  ],
  complaint: [{}],
  sheet: [{}],
  authority: [{}],
  'arrival-check': [
    { left: 1, first: { code: 'gauge', wheel: 'LF', values: {} } },
    { left: 3, first: { code: 'sensor', wheel: 'RR', values: {} } },
  ],
  'recorded-twice': [{ fact: 'gauge', phase: 'arrival' }],
  'findings-uncomputed': [{ changed: true }, { changed: false }],
  'findings-unconfirmed': [{}],
  'comeback-cause-missing': [{}],
  'estimate-missing': [{}],
  'estimate-unshown': [{}],
  'estimate-unanswered': [{}],
  'estimate-undelivered': [{}],
  'part-promised': [{ partCode: 'TS-315-C' }],
  'step-open': [{ step }, { step: { ...step, wheel: null } }],
  'step-blocked': [{}],
  'drive-open': [
    { minutes: 0, needed: 20 },
    { minutes: 13, needed: 30 },
  ],
  'drive-doubtful': [{ typed: 22, clock: 3, by: 'timed' }],
  'seal-gate': [{ reason: { code: 'findings-unconfirmed', wheel: null, values: {} } }],
  'payment-open': [{ sealed: false }, { sealed: true }],
  'handle-with-care': [
    { danger: 'sealant', wheels: [] },
    { danger: 'run-low', wheels: ['LF', 'RR'] },
  ],
  'report-unsealed': [{}],
  keys: [{}],
  'promise-slips': [{ minutes: 40 }, { minutes: 130 }, { minutes: 2_818 }],
}

describe('what an order waits for', () => {
  for (const [code, values] of Object.entries(cases) as [MoveCode, readonly MoveValues[MoveCode][]][])
    for (const wheel of ['LF', null] as const)
      it.each(values)(`${code} at ${wheel} of %j is a plain sentence`, (of) => {
        expect(faultOf(moveWords(english.moves, { code, wheel, values: of }))).toBeNull()
      })

  it('names the step with its wheel', () => {
    expect(moveWords(english.moves, { code: 'step-open', wheel: 'RR', values: { step } })).toBe(
      'Take the wheel off, right rear.',
    )
  })

  it('counts what is left of the arrival check and says what comes first', () => {
    const values = { left: 3, first: { code: 'sensor', wheel: 'RR', values: {} } } as const
    expect(moveWords(english.moves, { code: 'arrival-check', wheel: 'RR', values })).toBe(
      'Arrival check: 3 things left. Trigger the right rear sensor; silent counts after two spaced tries.',
    )
  })
})
