/**
 * Source: consumer pages on tire care, read (tire-gauge.com): a tire loses about 1 psi a month through its rubber. Nobody
 * may call that a leak.
 */
import { isLeak, lossBetween, lossUncertainty } from '@bayledger/reckoning/pressure/air-loss'
import { airAtSeaLevel } from '@bayledger/reckoning/pressure/air-pressure'
import { kilopascalsApart } from '@bayledger/reckoning/units/measured'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin } from '@bayledger/reckoning/units/temperature-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const gauged = (value: number, fahrenheit = 68) => ({
  gauge: inKilopascals({ value, unit: 'psi' }),
  temperature: inKelvin({ value: fahrenheit, unit: 'F' }),
  air: airAtSeaLevel,
})

const errors = { gauge: kilopascalsApart(6.894757), temperature: 5 / 1.8 }

published({ document: 'Consumer pages on tire care', section: 'natural loss', certainty: 'read' }, () => {
  it.each([30, 35, 44, 60])('a psi lost of %d in a month is no leak by shop gauges', (psi) => {
    const loss = lossBetween(gauged(psi), gauged(psi - 1), 30)
    expect(kilopascalsIn('psi', loss?.perDay ?? kilopascalsApart(0))).toBeCloseTo(1 / 30, 9)
    expect(loss && isLeak(loss, lossUncertainty(gauged(psi), errors))).toBe(false)
  })

  it('three psi lost of 35 in a month are one', () => {
    const loss = lossBetween(gauged(35), gauged(32), 30)
    expect(loss && isLeak(loss, lossUncertainty(gauged(35), errors))).toBe(true)
  })

  it('half a year of it leaves 35 psi at 29', () => {
    const loss = lossBetween(gauged(35), gauged(29), 182)
    expect(kilopascalsIn('psi', loss?.perDay ?? kilopascalsApart(0)) * 30).toBeCloseTo(1, 1)
  })
})
