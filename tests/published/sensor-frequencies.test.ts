/**
 * Source: public articles of the trade, which name the sensors' frequencies as 315 and 433 MHz (quoted). The list is open: a
 * frequency that no one named is not in it, and that is no error.
 */
import { bandOf, isSameFrequency } from '@bayledger/reckoning/sensor/frequency'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: 'Trade articles on sensor frequencies', certainty: 'quoted' }, () => {
  it.each([
    [315, 315],
    [433, 433.92],
  ])('%d MHz is the band of %d MHz', (named, nominal) => {
    expect(bandOf(named)?.nominalMHz).toBe(nominal)
  })

  it('433 MHz, as the articles round it, is heard by a vehicle that listens to 433.92 MHz', () => {
    expect(isSameFrequency(433, 433.92)).toBe(true)
  })

  it('a vehicle that listens to 315 MHz hears none of 433 MHz', () => {
    expect(isSameFrequency(433, 315)).toBe(false)
  })

  it.each([125, 390, 868])('%d MHz is not in the list', (megahertz) => {
    expect(bandOf(megahertz)).toBeNull()
  })
})
