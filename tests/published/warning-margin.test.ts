/** Source: 49 CFR 571.138 S4.2(a), read in 2026: the light comes on at a quarter below the vehicle maker's cold pressure. */
import { warningMargin } from '@bayledger/reckoning/tire/warning-margin'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: '49 CFR 571.138', section: 'S4.2(a)', edition: '2026', certainty: 'read' }, () => {
  it.each([32, 35, 41])('a label of %d psi warns after a quarter', (psi) => {
    expect(warningMargin(psi, 0.75 * psi)).toEqual({ percent: 25, isMoreThanAQuarter: false })
  })

  it('a tire that is set above the label has lost more than a quarter by then', () => {
    expect(warningMargin(41, 0.75 * 33).isMoreThanAQuarter).toBe(true)
  })
})
