import { describe, expect, it } from 'vitest'
import { arrivalOf, oneSensorJob } from '../../../test-support/one-sensor-job.ts'
import { technician } from '../../../test-support/shop.ts'
import { evidenceOf } from '../../questions/evidence-of.ts'
import { correctedPressure } from './corrected-pressure.ts'

describe('a reading with a gauge that is off the master', () => {
  it.each([
    [33, 'psi', 0.2, 32.8],
    [33, 'psi', -0.2, 33.2],
    [23.25, 'psi', 0.15, 23.1],
    // 0.2 psi are 1.379 kPa (NIST SP 811, appendix B.8: 1 psi = 6.894 757 kPa) and 0.013 79 bar.
    [228, 'kPa', 0.2, 226.62],
    [2.28, 'bar', 0.2, 2.27],
    [0.1, 'psi', 0.2, -0.1],
  ] as const)('%f %s by a gauge that shows %f psi more is %f', (value, unit, offsetPsi, corrected) => {
    expect(correctedPressure({ value, unit }, { offsetPsi })).toEqual({ value: corrected, unit })
  })

  it('stays as it was read where the gauge agrees, or where its offset was not recorded', () => {
    const read = { value: 33.004, unit: 'psi' } as const
    expect(correctedPressure(read, { offsetPsi: 0 })).toBe(read)
    expect(correctedPressure(read, {})).toBe(read)
  })
})

describe('an order gauged with a gauge that is off the master', () => {
  const readWith = (offsetPsi: number | undefined) => {
    const pen = oneSensorJob('written-up')
    const arrival = arrivalOf('LF')
    if (arrival.gauge === null) throw new Error('the arrival check has no gauge reading')
    const instrument = { ...arrival.gauge.instrument, ...(offsetPsi === undefined ? {} : { offsetPsi }) }
    pen.write('wheel.checked', { ...arrival, gauge: { ...arrival.gauge, instrument } }, { by: technician })
    return { read: arrival.gauge.pressure, state: pen.state() }
  }

  it('counts the corrected pressure, in the findings too, and keeps what was read', () => {
    const { read, state } = readWith(0.5)
    const corrected = read.value - 0.5
    expect(state.arrival.wheels.LF?.gauge).toMatchObject({ pressure: { value: corrected }, asRead: read })
    expect(evidenceOf(state, null).wheels?.LF?.gauge).toBeCloseTo(corrected, 2)
  })

  it('counts what was read in entries from before gauges carried their offset', () => {
    const { read, state } = readWith(undefined)
    expect(state.arrival.wheels.LF?.gauge).toMatchObject({ pressure: read })
    expect(state.arrival.wheels.LF?.gauge).not.toHaveProperty('asRead')
    expect(evidenceOf(state, null).wheels?.LF?.gauge).toBeCloseTo(read.value, 2)
  })
})
