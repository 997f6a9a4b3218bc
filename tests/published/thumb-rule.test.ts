/**
 * Source: consumer pages on tire care, read: "about 1 psi per 10 °F" (tire-gauge.com, how often tire pressure is
 * checked) and "about 2 %" per 10 °F (1037theloon.com). No federal page with the number was found. It holds near a car's
 * pressures and says too little for a truck's.
 */
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { shownPsi } from './shifted.ts'

const gainedBy10 = (psi: number) => shownPsi(psi, 68, 78) - psi

published(
  { document: 'Consumer pages on tire care', section: 'pressure and weather', certainty: 'read' },
  () => {
    it.each([30, 32, 33, 35, 36, 40])('%d psi gains about 1 psi by 10 °F', (psi) => {
      expect(Math.abs(gainedBy10(psi) - 1)).toBeLessThan(0.2)
    })

    it('80 psi gains more than the rule says', () => {
      expect(gainedBy10(80)).toBeGreaterThan(1.5)
    })

    it.each([32, 35])(
      '%d psi moves by about 2 %% each 10 °F, a bit more than that of gauge pressure',
      (psi) => {
        expect(gainedBy10(psi) / psi).toBeGreaterThan(0.02)
        expect(gainedBy10(psi) / psi).toBeLessThan(0.03)
      },
    )

    it.each([32, 35])('%d psi of gauge pressure and open air together move by 1.9 %%', (psi) => {
      expect(gainedBy10(psi) / (psi + 14.696)).toBeCloseTo(0.019, 3)
    })
  },
)
