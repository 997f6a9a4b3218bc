/**
 * Source: a club mailing list of July 2002 (ftp.team.net/html/fot/2002-07/msg00126.html), read: 20 psi at 70 °F is
 * 18.7 psi at 50 °F and 23.9 at 130. It uses 14.7 psi and 460 °F, each rounded, and gives tenths: agreement is required
 * for within 0.05 psi.
 */
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { shownPsi } from './shifted.ts'

published(
  {
    document: 'Club mailing list, tire pressure by the gas law',
    section: 'message 126',
    edition: 'July 2002',
    certainty: 'read',
  },
  () => {
    it.each([
      [20, 70, 50, 18.7],
      [20, 70, 130, 23.9],
    ])('%d psi at %d °F is at %d °F %d psi', (psi, from, to, printed) => {
      expect(Math.abs(shownPsi(psi, from, to) - printed)).toBeLessThanOrEqual(0.05)
    })

    it('its rounded 14.7 and 460 move the answer by less than 0.01 psi', () => {
      expect(Math.abs(shownPsi(20, 70, 130) - (34.7 * 590) / 530 + 14.7)).toBeLessThan(0.01)
    })
  },
)
