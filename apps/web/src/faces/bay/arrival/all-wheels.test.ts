import { kinds } from '@bayledger/ledger/registry'
import { blankOrder } from '@bayledger/ledger/state'
import { readWheelReadings } from '@bayledger/reckoning/scan/read-wheel-readings'
import { describe, expect, it } from 'vitest'
import { allWheels, exampleText, wheelEntries } from './all-wheels.ts'

const order = blankOrder('shop', 'order')
const silentBefore = {
  ...order,
  arrival: { ...order.arrival, wheels: { RR: { sensor: { reading: { answer: 'silent', tries: 2 } } } } },
} as unknown as typeof order

describe('the readings of all wheels on the screen', () => {
  it('name the wheels of which nothing was read', () => {
    const read = allWheels(order, 'LF, 1A2B3C10\nRF, 1A2B3C1x\nRR, silent, 3')
    expect(read.readings.map(({ wheel }) => wheel)).toEqual(['LF', 'RR'])
    expect(read.faults).toEqual([expect.stringContaining('Line 2, RF, ID')])
    expect(read.missing).toEqual(['RF', 'LR'])
  })

  it('leave out a spare that has no sensor, and say so', () => {
    const read = allWheels(order, 'SP, 1A2B3C14')
    expect(read.readings).toEqual([])
    expect(read.faults).toEqual([expect.stringMatching(/^SP: .* no sensor/)])
  })

  it('come with an example that is read back', () => {
    expect(readWheelReadings(exampleText(order)).readings).toHaveLength(2)
  })
})

describe('the entries of all wheels', () => {
  it('are what the ledger takes; nothing is written of a wheel that nobody asked', () => {
    const { readings } = readWheelReadings(
      'LF, 1A2B3C10, 214 kPa, 20 C, low, 315 MHz\nRR, silent, 3\nLR, not-tried',
    )
    const entries = wheelEntries(silentBefore, readings)
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
    expect(wheelEntries(silentBefore, readings)[0]?.sensor).toMatchObject({ answer: 'answered', tries: 3 })
  })
})
