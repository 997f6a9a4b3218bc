/**
 * Source: radio allocations from memory: 433.05 to 434.79 MHz (ETSI EN 300 220-2) and 2,400 to 2,483.5 MHz; a sensor
 * anywhere in an allocation is of that band.
 */
import { bandOf } from '@bayledger/reckoning/sensor/frequency'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: 'ETSI EN 300 220-2 and the 2.4 GHz band', certainty: 'from memory' }, () => {
  it.each([
    [433.05, 433.92],
    [434.79, 433.92],
    [2_400, 2_400],
    [2_441, 2_400],
    [2_483.5, 2_400],
  ])('%d MHz is of the band of %d MHz', (megahertz, nominal) => {
    expect(bandOf(megahertz)?.nominalMHz).toBe(nominal)
  })
})
