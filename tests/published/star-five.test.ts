/**
 * Source: a truck team's wheel sheet, read online in 2026 (instaforex-loprais.com): five nuts in the order 1-3-5-2-4.
 * Every source of the trade shows the same star.
 */
import { readSequence } from '@bayledger/reckoning/torque/read-sequence'
import { starSequence } from '@bayledger/reckoning/torque/star-sequence'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: 'A wheel sheet', section: 'five studs', certainty: 'read' }, () => {
  it('1-3-5-2-4 is our star', () => {
    expect(starSequence(5)).toEqual([1, 3, 5, 2, 4])
  })

  it('1-3-5-2-4 is taken from a maker’s page', () => {
    expect(readSequence('1-3-5-2-4', 5)).toMatchObject({ ok: true })
  })

  it('1-2-3-4-5 is no star', () => {
    expect(readSequence('1-2-3-4-5', 5)).toMatchObject({ ok: false, fault: 'too-near' })
  })
})
