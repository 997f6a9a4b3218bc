import type { PayloadOf } from '@bayledger/ledger/registry'
import type { BalanceLeft } from '@bayledger/reckoning/wheel/balance-left'
import { describe, expect, it } from 'vitest'
import { reportContext } from '../../test-support/worked-context.ts'
import { workedState } from '../../test-support/worked-state.ts'
import { workSection } from './work-section.ts'

const step = {
  stepKey: 'RR.tire.core',
  code: 'torque-core' as const,
  round: null,
  opensTire: false,
  height: 'lifted' as const,
  wheel: 'RR' as const,
  values: {},
  closedBy: 'step.closed' as const,
  figure: null,
  needs: ['value' as const],
  waitsFor: [],
  unverified: null,
  cautions: [],
  bundleKey: null,
}

/** The rows of what was written down by hand; `null` where there is no such table. */
const byHand = (value: PayloadOf<'step.closed'>['value']) => {
  const { plan } = workedState
  if (!plan) throw new RangeError('the worked order has a plan')
  const { blocks } = workSection(
    {
      ...workedState,
      plan: { ...plan, plan: { planVersion: 1, steps: [step] } },
      closed: { 'RR.tire.core': { kind: 'step.closed', value, written: plan.written } },
    },
    reportContext,
  )
  const table = blocks.find((block) => block.kind === 'table' && block.caption === 'Written down by hand')
  return table?.kind === 'table' ? table.rows.map(({ cells }) => cells) : null
}

describe('what was written down by hand', () => {
  it('is printed with its wheel and step', () => {
    expect(byHand('4 lbf·in')).toEqual([
      [{ text: 'RR' }, { text: expect.stringContaining('valve core') }, { text: '4 lbf·in' }].map((cell) => ({
        kind: 'words',
        ...cell,
      })),
    ])
  })

  it('has no table where nothing was', () => {
    expect(byHand(null)).toBeNull()
  })

  it('says what balancing left in figures, and that a side is over what it may have', () => {
    const left = { shows: 'figures', unit: 'oz', inner: 0.25, outer: 0, balancedAgain: false } as const
    const recorded = (value: BalanceLeft) => byHand(value)?.[0]?.[2]
    expect(recorded(left)).toMatchObject({ text: '0.25 oz left on the inner side, 0 oz on the outer' })
    expect(recorded({ ...left, outer: 0.5, balancedAgain: true })).toMatchObject({
      text: '0.25 oz left on the inner side, 0.5 oz on the outer: over the usual 10 g a side, after it was balanced again',
    })
    expect(recorded({ shows: 'no-figure' })).toMatchObject({ text: 'the machine shows no figure' })
  })

  it('says which tires have an arrow before a rotation, and the sizes that were read', () => {
    const recorded = (value: PayloadOf<'step.closed'>['value']) => byHand(value)?.[0]?.[2]
    expect(recorded({ arrows: [], sizes: {} })).toMatchObject({ text: 'no tire has an arrow' })
    expect(recorded({ arrows: ['RR', 'LF'], sizes: { LR: '235/60R18 103H' } })).toMatchObject({
      text: 'arrow, rolls one way only: LF, RR; size read on LR: 235/60R18 103H',
    })
  })
})
