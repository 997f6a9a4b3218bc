import { describe, expect, it } from 'vitest'
import { oneSensorJob } from '../../test-support/one-sensor-job.ts'
import type { OrderState } from '../state.ts'
import { stillOffered, type Visit, visitOf } from './visit.ts'

const visit = (state: OrderState): Visit => {
  const made = visitOf(state)
  if (!made) throw new RangeError('it was not opened')
  return made
}
const answered = (of: Visit, answer: 'authorized' | 'declined' | 'deferred'): Visit => ({
  ...of,
  offers: of.offers.map((offer) => ({ ...offer, answer })),
})

describe('a visit as the vehicle’s own page shows it', () => {
  const repaired = visit(oneSensorJob('handed-back').state())

  it('has its cause, what was authorized, and the sensor that was fitted', () => {
    expect(repaired.cause?.code).toBe('sensor-silent')
    expect(repaired.offers.map(({ answer }) => answer)).toContain('authorized')
    expect(repaired.fitted).toHaveLength(1)
  })

  it('has each tire as received and as left, psi, and as the same air shows it at 68 °F', () => {
    const received = repaired.readings.filter(({ when }) => when === 'received')
    expect(received.length).toBeGreaterThanOrEqual(4)
    // The ideal gas law, computed by hand at 820 ft (98.37 kPa open air, 14.27 psi): 27 °F is 270.37 K, 68 °F is 293.15 K.
    for (const { psi, comparedPsi } of received)
      expect(comparedPsi).toBeCloseTo(((psi + 14.27) * 293.15) / 270.37 - 14.27, 1)
  })

  it('of an order that was only written up has no reading, and before the opening there is none', () => {
    expect(visit(oneSensorJob('written-up').state())).toMatchObject({ readings: [], fitted: [], offers: [] })
    expect(visitOf({ ...oneSensorJob('written-up').state(), opened: null })).toBeNull()
  })
})

describe('what is still offered', () => {
  const offered = visit(oneSensorJob('handed-back').state())

  it('is what was declined or put off, until it is bought', () => {
    expect(stillOffered([offered]).length).toBe(0)
    const later = answered(offered, 'deferred')
    expect(stillOffered([later]).length).toBe(later.offers.length)
    expect(stillOffered([answered(offered, 'authorized'), later])).toEqual([])
  })

  it('is named once, by its newest answer', () => {
    const [first, ...others] = stillOffered([answered(offered, 'declined'), answered(offered, 'deferred')])
    expect(first?.offer.answer).toBe('declined')
    expect(others.length).toBe(offered.offers.length - 1)
  })
})
