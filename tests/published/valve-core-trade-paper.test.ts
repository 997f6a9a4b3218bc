/**
 * Source: a trade paper's article of 17 September 2013 (tirebusiness.com), read online in 2026: a valve core takes 4
 * inch-pounds. The sensor maker's figure governs.
 */
import { stemTorqueDoubts, torqueWords } from '@bayledger/reckoning/torque/plausible-torque'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  { document: 'A trade paper on valve cores', edition: '17 September 2013', certainty: 'read' },
  () => {
    it('4 lbf·in is plausible for a valve core', () => {
      expect(stemTorqueDoubts('valve-core', { value: 4, unit: 'lbf·in' })).toEqual([])
    })

    it('4 lbf·ft is twelve times that, and was meant in lbf·in', () => {
      expect(stemTorqueDoubts('valve-core', { value: 4, unit: 'lbf·ft' })).toMatchObject([
        { code: 'outside-the-usual', meant: ['lbf·in'] },
      ])
    })

    it('4 lbf·in is shown as 0.5 N·m beside', () => {
      expect(torqueWords({ value: 4, unit: 'lbf·in' })).toBe('4 lbf·in (0.5 N·m)')
    })
  },
)
