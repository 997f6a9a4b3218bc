import { kinds } from '@bayledger/ledger/registry'
import { blankOrder, type OrderState } from '@bayledger/ledger/state'
import { readWheelReadings } from '@bayledger/reckoning/scan/read-wheel-readings'
import { describe, expect, it } from 'vitest'
import { plannedStep } from '../../../../../../packages/ledger/test-support/planned-step.ts'
import { tarn } from '../../../../../../packages/ledger/test-support/tarn.ts'
import { allWheels, exampleText, wheelEntries } from './all-wheels.ts'

const order = blankOrder('shop', 'order')
const written = {
  entryId: 'entry',
  seq: 9,
  by: { kind: 'staff', staffId: 'ines' } as const,
  deviceId: null,
  writtenAt: '2026-01-12T16:40:00.000Z',
  receivedAt: '2026-01-12T16:40:00.000Z',
}
const silentBefore = {
  ...order,
  arrival: { ...order.arrival, wheels: { RR: { sensor: { reading: { answer: 'silent', tries: 2 } } } } },
} as unknown as typeof order

describe('the readings of all wheels on the screen', () => {
  it('name the wheels of which nothing was read', () => {
    const read = allWheels(order, 'arrival', 'LF, 1A2B3C10\nRF, 1A2B3C1x\nRR, silent, 3')
    expect(read.readings.map(({ wheel }) => wheel)).toEqual(['LF', 'RR'])
    expect(read.faults).toEqual([expect.stringContaining('Line 2, RF, ID')])
    expect(read.missing).toEqual(['RF', 'LR'])
  })

  it('leave out a spare that has no sensor, and say so', () => {
    const read = allWheels(order, 'arrival', 'SP, 1A2B3C14')
    expect(read.readings).toEqual([])
    expect(read.faults).toEqual([expect.stringMatching(/^SP: .* no sensor/)])
  })

  it('come with an example that is read back', () => {
    expect(readWheelReadings(exampleText(order, 'arrival')).readings).toHaveLength(2)
  })
})

/** Before its closing check: the two front sensors may be read, the rear ones wait for a relearn. */
const closing = {
  ...order,
  sheet: { sheet: tarn, written },
  plan: {
    plan: {
      planVersion: 1,
      steps: [
        plannedStep('vehicle.learn', null, 'relearn.done'),
        plannedStep('LF.sensor.read', 'LF', 'wheel.checked'),
        plannedStep('RF.sensor.read', 'RF', 'wheel.checked'),
        plannedStep('RR.sensor.read', 'RR', 'wheel.checked', ['vehicle.learn']),
      ],
    },
    written,
  },
} as OrderState

describe('the closing check of all wheels', () => {
  it('closes the steps that read a sensor now, and leaves out what no step reads', () => {
    const read = allWheels(closing, 'closing', 'LF, 1A2B3C10\nRR, 1A2B3C12')
    expect(read.faults).toEqual([expect.stringMatching(/^RR: no step of the plan reads its sensor now/)])
    expect(read.missing).toEqual(['RF'])
    const entries = wheelEntries(closing, 'closing', read.readings)
    expect(entries).toMatchObject([{ phase: 'closing', stepKey: 'LF.sensor.read', wheel: 'LF' }])
    for (const entry of entries) expect(kinds['wheel.checked'].payload.safeParse(entry).success).toBe(true)
  })

  it('comes with an example of the wheels that are read now', () => {
    const { readings } = readWheelReadings(exampleText(closing, 'closing'))
    expect(readings.map(({ wheel }) => wheel)).toEqual(['LF', 'RF'])
  })
})

describe('the entries of all wheels', () => {
  it('are what the ledger takes; nothing is written of a wheel that nobody asked', () => {
    const { readings } = readWheelReadings(
      'LF, 1A2B3C10, 214 kPa, 20 C, low, 315 MHz\nRR, silent, 3\nLR, not-tried',
    )
    const entries = wheelEntries(silentBefore, 'arrival', readings)
    expect(entries.map(({ wheel }) => wheel)).toEqual(['LF', 'RR'])
    for (const entry of entries) expect(kinds['wheel.checked'].payload.safeParse(entry).success).toBe(true)
    expect(entries[0]?.sensor).toMatchObject({
      answer: 'answered',
      tries: 1,
      pressure: { value: 214, unit: 'kPa' },
      temperature: { value: 20, unit: 'C' },
      battery: 'low',
      frequencyMHz: 315,
    })
    expect(entries[1]?.sensor).toEqual({ answer: 'silent', tries: 3 })
  })

  it('count an answer after silent tries', () => {
    const { readings } = readWheelReadings('RR, 1A2B3C12')
    expect(wheelEntries(silentBefore, 'arrival', readings)[0]?.sensor).toMatchObject({
      answer: 'answered',
      tries: 3,
    })
  })
})
