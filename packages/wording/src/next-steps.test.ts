import type { NextStep } from '@bayledger/ledger/questions/next-steps'
import { expect, it } from 'vitest'
import { faultOf } from '../test-support/plain-sentence.ts'
import { english } from './en/english.ts'
import { nextStepWords } from './next-steps.ts'

const contact = { telephone: '+15555550100', person: 'Ottoline Pask' }

const said: readonly (readonly [NextStep, string])[] = [
  [
    { code: 'call-before-moving' },
    'Before it is moved, call us, (555) 555-0100, or ask for Ottoline Pask at the counter.',
  ],
  [
    { code: 'tow-or-spare', spare: 'full-size', psi: 63.8 },
    'Have it towed, or have us fit the spare in its place: full size, 63.8 psi, no damage seen.',
  ],
  [
    { code: 'tow-or-spare', spare: 'temporary', psi: 60 },
    'Have it towed, or have us fit the temporary spare (60.0 psi). Obey the limits of speed and distance on its sidewall.',
  ],
  [
    { code: 'tow-or-spare', spare: 'low', psi: 8, label: 60 },
    'Have it towed. The spare cannot be used as it is: it has 8.0 psi of 60.',
  ],
  [
    { code: 'tow-or-spare', spare: 'damaged' },
    'Have it towed. The spare cannot be used: its tire is damaged.',
  ],
  [
    { code: 'tow-or-spare', spare: 'not-checked' },
    'Have it towed. We did not check the spare; do not count on it.',
  ],
  [{ code: 'tow-or-spare', spare: 'none' }, 'Have it towed. It has no spare.'],
  [
    { code: 'on-the-spare', wheel: 'LF', spare: 'temporary' },
    'The temporary spare is on in place of the left front wheel. Keep to the limits of speed and distance on its sidewall, and have the tire repaired soon. The warning light may stay on until then.',
  ],
  [
    { code: 'on-the-spare', wheel: 'RR', spare: 'full-size' },
    'The spare is on in place of the right rear wheel. Have the tire that came off repaired soon: until then you have no spare, and the warning light may stay on.',
  ],
  [{ code: 'tow-or-spare', spare: 'no-help' }, 'Have it towed. The spare does not help here.'],
  [
    {
      code: 'retorque',
      miles: { from: 50, to: 100 },
      at: { from: { value: 48290.467, unit: 'km' }, to: { value: 48370.934, unit: 'km' } },
    },
    'In 50 to 100 miles, at 48,290 to 48,371 km: come back for a free check that the wheels are tight, no appointment.',
  ],
  [
    { code: 'retorque', miles: { from: 50, to: 100 }, at: null },
    'In 50 to 100 miles: come back for a free check that the wheels are tight, no appointment.',
  ],
  [
    { code: 'report-the-light', minutes: 20 },
    'Drive 20 minutes to be sure. If the warning light is on then, check the air in the tires with a gauge and call us, (555) 555-0100.',
  ],
  [
    { code: 'if-light-returns' },
    'If the light comes back, check the air in all cold tires with a gauge and call us, (555) 555-0100.',
  ],
  [
    {
      code: 'warm-tires',
      wheels: ['LF', 'RF', 'RR', 'LR'],
      psi: 35.9,
      labelPsi: 33,
      outdoor: { value: 19, unit: 'F' },
      coldPsi: 33.03,
      tonight: { low: { value: -4, unit: 'F' }, psi: 30.76 },
      afterADrive: { air: { value: 100, unit: 'F' }, psi: 41.02 },
    },
    'The label says 33 and we set 35.9, because the tires were warm: cold, expect 33.0 psi at 19 °F, 30.8 at −4 °F tonight; after a drive (air at 100 °F) up to 41.0. Do not let air out of a warm tire.',
  ],
  [
    {
      code: 'warm-tires',
      wheels: ['LF', 'RF'],
      psi: 37.9,
      labelPsi: 36,
      outdoor: { value: 19, unit: 'F' },
      coldPsi: null,
      tonight: null,
      afterADrive: null,
    },
    'Left front and right front: the label says 36 and we set 37.9, because the tires were warm. Do not let air out of a warm tire.',
  ],
  [
    { code: 'light-stays-on' },
    'The warning light stays on until its cause is repaired. While it is on, it cannot tell you of another low tire.',
  ],
  [
    { code: 'set-again-cold', wheels: ['SP'], psi: 60, coldPsi: 55.81 },
    'Spare: set to the limit, 60.0 psi, which is 55.8 cold. Have it set again cold.',
  ],
  [
    { code: 'check-pressures', every: 'week', why: 'tire-low', firstBy: '2026-01-19' },
    'Check the air in all tires with a gauge once a week, first by Jan 19, 2026, because a tire has less air than it should. Check cold tires (parked 3 hours, or driven under a mile), against the door label. Let air out only of a cold tire that is over it.',
  ],
  [
    { code: 'check-pressures', every: 'trip', why: 'work-left', firstBy: '2026-01-12' },
    'Check the air in all tires with a gauge before every trip, because of work that was not done. Check cold tires (parked 3 hours, or driven under a mile), against the door label. Let air out only of a cold tire that is over it.',
  ],
  [
    { code: 'check-pressures', every: 'month', why: null, firstBy: '2026-02-11' },
    'Check the air in all tires with a gauge once a month, first by Feb 11, 2026. Check cold tires (parked 3 hours, or driven under a mile), against the door label. Let air out only of a cold tire that is over it.',
  ],
  [
    { code: 'deferred-work', day: '2026-12-01' },
    'What you answered with “Not today” comes up again on Dec 1, 2026.',
  ],
]

it.each(said)('%j is said to the customer in a plain sentence', (step, words) => {
  expect(nextStepWords(english.nextSteps, step, contact)).toBe(words)
  expect(faultOf(words)).toBeNull()
})

it('every code has its example here', () => {
  expect(new Set(said.map(([{ code }]) => code))).toEqual(new Set(Object.keys(english.nextSteps)))
})
