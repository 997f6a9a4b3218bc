import { blankOrder, type OrderState } from '@bayledger/ledger/state'
import { expect, it } from 'vitest'
import { screenOfForm } from './selected-screen.ts'

const order = {
  ...blankOrder('shop', 'order'),
  plan: {
    plan: {
      steps: [
        { stepKey: 'RR.wheel.off', wheel: 'RR' },
        { stepKey: 'vehicle.lift.up', wheel: null },
      ],
    },
  },
  closed: { 'vehicle.lift.up': {} },
} as unknown as OrderState
const screenOf = (key: string) => screenOfForm(order, `order/${key}`)

it('a form that the ledger refused is on the screen of its step, as long as that is open', () => {
  expect(screenOf('RR.wheel.off')).toEqual({ at: 'step', stepKey: 'RR.wheel.off' })
  expect(screenOf('RR.wheel.off/leave')).toEqual({ at: 'step', stepKey: 'RR.wheel.off' })
  expect(screenOf('vehicle.lift.up')).toBeNull()
  expect(screenOf('aside/RR.wheel.off')).toEqual({ at: 'aside', stepKey: 'RR.wheel.off' })
  expect(screenOf('aside/vehicle.lift.up')).toBeNull()
})

it('a form beside the steps is on the screen of what it is about', () => {
  expect(screenOf('gauge/LF')).toEqual({ at: 'task', task: { what: 'gauge', wheel: 'LF' } })
  expect(screenOf('module')).toEqual({ at: 'task', task: { what: 'control-module' } })
  expect(screenOf('withdraw/entry')).toEqual({ at: 'history' })
  expect(screenOf('not-right/RR.wheel.off')).toEqual({
    at: 'not-right',
    stepKey: 'RR.wheel.off',
    wheel: 'RR',
  })
  expect(screenOf('not-right/LF')).toEqual({ at: 'not-right', stepKey: null, wheel: 'LF' })
  expect(screenOf('not-right/vehicle')).toEqual({ at: 'not-right', stepKey: null, wheel: null })
  expect(screenOf('told/battery')).toBeNull()
})
