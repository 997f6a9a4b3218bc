import type { OrderState } from '@bayledger/ledger/state'
import { expect, it } from 'vitest'
import { reportContext } from '../../test-support/worked-context.ts'
import { workedState } from '../../test-support/worked-state.ts'
import { pressureSection } from './pressure-section.ts'
import { readingsSection } from './readings-section.ts'

const before = workedState.arrival.wheels.LF
if (!before?.gauge) throw new RangeError('the left front tire of the worked order was gauged')
/** The left front tire as it is folded where its gauge shows 0.4 psi more than the master. */
const state: OrderState = {
  ...workedState,
  arrival: {
    ...workedState.arrival,
    wheels: {
      ...workedState.arrival.wheels,
      LF: {
        ...before,
        gauge: {
          ...before.gauge,
          pressure: { value: 30.6, unit: 'psi' },
          asRead: { value: 31, unit: 'psi' },
          instrument: { ...before.gauge.instrument, code: 'GA-9', offsetPsi: 0.4 },
        },
      },
    },
  },
}

it('prints the gauge-corrected pressure and what the gauge showed', () => {
  const printed = JSON.stringify(readingsSection(state, reportContext, 'arrival').blocks)
  expect(printed).toContain('"value":"30.6","unit":"psi"')
  expect(printed).toContain('GA-9, read 31.0 psi')
  expect(printed).toContain('Pressures by gauge are gauge-corrected')
  expect(JSON.stringify(readingsSection(workedState, reportContext, 'arrival').blocks)).not.toContain(
    'gauge-corrected',
  )
})

it('names each gauge with its offset, and whether the figures are corrected by it', () => {
  const printed = JSON.stringify(pressureSection(state, reportContext).blocks)
  expect(printed).toContain(
    'Gauge GA-9: reads +0.4 psi against the master gauge; figures here are gauge-corrected pressures.',
  )
  expect(printed).toContain('figures here are as read.')
})
