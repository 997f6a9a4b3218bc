import type { NextStep } from '@bayledger/ledger/questions/next-steps'
import { expect, it } from 'vitest'
import { faultOf } from '../test-support/plain-sentence.ts'
import { english } from './en/english.ts'
import { nextStepWords } from './next-steps.ts'

const said: readonly (readonly [NextStep, string])[] = [
  [{ code: 'call-before-moving' }, 'Call us before the car is moved; we tell you how it gets home or to us.'],
  [
    {
      code: 'retorque',
      miles: { from: 50, to: 100 },
      at: { from: { value: 48290.467, unit: 'km' }, to: { value: 48370.934, unit: 'km' } },
    },
    'In 50 to 100 miles, at 48,290 to 48,371 km: come back for a free check of the wheel torque, no appointment.',
  ],
  [
    { code: 'retorque', miles: { from: 50, to: 100 }, at: null },
    'In 50 to 100 miles: come back for a free check of the wheel torque, no appointment.',
  ],
  [{ code: 'report-the-light' }, 'Tell us what the warning light does on the next 20 minutes of driving.'],
  [
    { code: 'warm-tires', overPsi: 1.91 },
    'The tires may read up to 2.0 psi over the label while warm. That is on purpose; do not let air out.',
  ],
  [
    { code: 'check-pressures', every: 'week' },
    'Check all pressures once a week with cold tires, against the door label.',
  ],
  [
    { code: 'deferred-work', day: '2026-12-01' },
    'What you answered with Later comes up again on Dec 1, 2026.',
  ],
]

it.each(said)('%j is said to the customer in a plain sentence', (step, words) => {
  expect(nextStepWords(english.nextSteps, step)).toBe(words)
  expect(faultOf(words)).toBeNull()
})

it('every code has its example here', () => {
  expect(new Set(said.map(([{ code }]) => code))).toEqual(new Set(Object.keys(english.nextSteps)))
})
