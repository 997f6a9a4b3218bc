/**
 * Source: a tire trade association's guidance on puncture repair, from memory: only in the tread, at most 1/4 inch
 * (6 mm), the tire off the wheel and seen inside, plug and patch together, over no other repair, more than 2/32 inch
 * of tread, not run low. The tire maker's own rules govern.
 */
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { noDangers } from '@bayledger/reckoning/job-plan/tire-dangers'
import { expect, it } from 'vitest'
import { howOf } from '../../packages/reckoning/test-support/in-words.ts'
import { utilitySheet } from '../../packages/reckoning/test-support/utility-sheet.ts'
import { published } from './published.ts'

const { steps } = planJob(
  utilitySheet,
  [
    { work: { kind: 'find-leak', wheel: 'LF' }, bundleKey: 'leak.LF' },
    { work: { kind: 'repair-puncture', wheel: 'LF' }, bundleKey: 'puncture.LF' },
  ],
  1,
  noDangers,
)
const step = (key: string) => steps.filter(({ stepKey }) => stepKey === `LF.${key}`)
const place = (key: string) => steps.findIndex(({ stepKey }) => stepKey === `LF.${key}`)

published({ document: 'Guidance on puncture repair', certainty: 'from memory' }, () => {
  it.each([
    ['leak.judge', /only in the tread between the outer grooves/],
    ['leak.judge', /at most 1\/4 in \(6 mm\)/],
    ['leak.judge', /over no other repair/],
    ['leak.judge', /more than 2\/32 in of tread left/],
    ['leak.judge', /never run low/],
    ['leak.judge', /A plug from outside is no repair/],
    ['leak.repair', /plug and patch together, from inside/],
  ] as const)('%s says %s', (key, words) => {
    expect(step(key).map(howOf).join('')).toMatch(words)
  })

  it.each([
    ['wheel.off', 'leak.judge'],
    ['tire.inside', 'leak.judge'],
    ['leak.judge', 'leak.repair'],
    ['leak.repair', 'tire.seat'],
    ['tire.seat', 'tire.leak'],
  ])('%s comes before %s', (first, then) => {
    expect(place(first)).toBeGreaterThanOrEqual(0)
    expect(place(first)).toBeLessThan(place(then))
  })
})
