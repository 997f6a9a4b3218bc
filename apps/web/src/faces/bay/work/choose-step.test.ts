import type { PayloadOf } from '@bayledger/ledger/registry'
import { blankOrder, type OrderState, untouchedWheel } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import { describe, expect, it } from 'vitest'
import { plannedStep as step } from '../../../../../../packages/ledger/test-support/planned-step.ts'
import { tarn } from '../../../../../../packages/ledger/test-support/tarn.ts'
import { chooseStep, hasTorqued, whyShut } from './choose-step.ts'

const written = (staffId: string) => ({
  entryId: 'entry',
  seq: 9,
  by: { kind: 'staff', staffId } as const,
  deviceId: null,
  writtenAt: '2026-01-12T16:40:00.000Z',
  receivedAt: '2026-01-12T16:40:00.000Z',
})

const consent: PayloadOf<'authority.given'> = {
  to: ['look', 'drive'],
  by: { relation: 'owner', name: '0'.repeat(64) },
  channel: 'in-person',
  money: '0'.repeat(64),
  lookFee: 'charged',
}

const orderWith = (steps: readonly Step[], rest: Partial<OrderState> = {}): OrderState => ({
  ...blankOrder('shop', 'order'),
  sheet: { sheet: tarn, written: written('ines') },
  authority: { look: null, drive: { ...consent, written: written('ines') } },
  plan: { plan: { planVersion: 1, steps: [...steps] }, written: written('ines') },
  ...rest,
})

const wrench = {
  instrumentId: 'w',
  code: 'W-07',
  dueOn: '2026-06-15',
  cyclesBefore: 0,
  rangeLow: 30,
  rangeHigh: 250,
  rangeUnit: 'lbf·ft',
} as const
const sealed = {
  wheel: 'RR',
  figure: { value: 83, unit: 'lbf·ft' },
  wrench,
  clicked: 5,
  total: 5,
  moved: [],
  timed: null,
  written: written('ines'),
} as const
const torquedByInes: Partial<OrderState> = {
  work: {
    RR: {
      ...untouchedWheel,
      removed: { remark: null, written: written('ines') },
      mounted: { cameFrom: 'RR', written: written('ines') },
      rounds: { full: { ...sealed, moved: [] }, again: { ...sealed, moved: [] } },
    },
  },
}
const check = step('RR.studs.second-check', 'RR', 'torque.checked')
const pressure = step('LF.pressure.set', 'LF', 'pressure.set')
const drive = step('vehicle.proof.drive', null, 'drive.done')

describe('the step that comes up', () => {
  it('is the first of the plan that may be done', () => {
    const order = orderWith([step('a', 'RR', 'step.closed', ['b']), step('b', 'LF', 'step.closed')])
    expect(chooseStep(order, 'ines', null)?.stepKey).toBe('b')
  })

  it('is one of the wheel that was tapped, where that wheel has one', () => {
    const order = orderWith([pressure, step('RR.pressure.set', 'RR', 'pressure.set')])
    expect(chooseStep(order, 'ines', 'RR')?.stepKey).toBe('RR.pressure.set')
    expect(chooseStep(order, 'ines', 'SP')?.stepKey).toBe('LF.pressure.set')
  })

  it('is the torque check for who may do it, and comes late for who torqued the wheel', () => {
    const order = orderWith([pressure, check], torquedByInes)
    expect(chooseStep(order, 'greta', null)?.closedBy).toBe('torque.checked')
    expect(chooseStep(order, 'ines', null)?.closedBy).toBe('pressure.set')
    expect(hasTorqued(order, 'RR', 'ines')).toBe(true)
    expect(hasTorqued(order, 'RR', 'greta')).toBe(false)
  })

  it('is never a drive while anything else can be done', () => {
    expect(chooseStep(orderWith([drive, pressure]), 'ines', null)?.stepKey).toBe('LF.pressure.set')
    expect(chooseStep(orderWith([drive]), 'ines', null)?.stepKey).toBe('vehicle.proof.drive')
  })

  it('is none when every step is done', () => {
    expect(chooseStep(orderWith([]), 'ines', null)).toBeNull()
  })
})

describe('a step that is shut', () => {
  it('names the step before it, and the figure that nobody verified', () => {
    const confirm: Step = {
      ...step('vehicle.confirm.stud-torque', null, 'figure.confirmed'),
      code: 'confirm-stud-torque',
      values: null,
      asWritten: { does: 'Confirm the wheel torque', how: '' },
    }
    const round = step('RR.studs.torque-half', 'RR', 'studs.torqued', [confirm.stepKey])
    expect(whyShut(orderWith([confirm, round]), round)).toMatch(/Not verified yet/)
    expect(whyShut(orderWith([pressure, drive]), { ...drive, waitsFor: [pressure.stepKey] })).toBe(
      'First: LF.pressure.set, LF.',
    )
    expect(whyShut(orderWith([pressure]), pressure)).toBeNull()
  })
})
