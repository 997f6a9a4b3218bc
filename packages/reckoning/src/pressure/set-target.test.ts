import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type SetTargetOf, setTarget } from './set-target.ts'

const bay: SetTargetOf = {
  placardPsi: 35,
  sidewallMaximumPsi: 51,
  outdoorFahrenheit: 20,
  tireFahrenheit: 70,
  tires: 'indoor-warmed',
  altitudeFeet: 0,
}

describe('the pressure to set', () => {
  // The trade's own worked numbers, computed from the gas law by hand.
  it.each([
    ['35 psi, bay 70 °F, outdoors 20 °F', bay, 40.2],
    [
      '35 psi, driven at 104 °F, outdoors 50 °F',
      { ...bay, tires: 'driven', tireFahrenheit: 104, outdoorFahrenheit: 50 },
      40.3,
    ],
    [
      '33 psi at 820 ft, bay 64 °F, outdoors 19 °F',
      { ...bay, placardPsi: 33, altitudeFeet: 820, tireFahrenheit: 64, outdoorFahrenheit: 19 },
      37.4,
    ],
    [
      '33 psi at 820 ft, tire 48 °F, outdoors 19 °F',
      { ...bay, placardPsi: 33, altitudeFeet: 820, tireFahrenheit: 48, outdoorFahrenheit: 19 },
      35.9,
    ],
    [
      '72 psi at 820 ft, tire 60 °F, outdoors 27 °F',
      {
        ...bay,
        placardPsi: 72,
        sidewallMaximumPsi: 80,
        altitudeFeet: 820,
        tireFahrenheit: 60,
        outdoorFahrenheit: 27,
      },
      77.8,
    ],
  ] as const)('%s', (_, of, psi) => {
    expect(setTarget(of)).toMatchObject({ psi, capped: false })
  })

  it('stops at the sidewall’s maximum and says that the tire is finished cold', () => {
    const van = {
      ...bay,
      placardPsi: 72,
      sidewallMaximumPsi: 80,
      tireFahrenheit: 104,
      outdoorFahrenheit: 24,
      altitudeFeet: 820,
      tires: 'driven',
    } as const
    expect(setTarget(van)).toMatchObject({ psi: 80, capped: true })
    expect(setTarget(van).says).toContain('again when it is cold')
  })

  it('stops at 6 psi over the label of a car tire', () => {
    expect(setTarget({ ...bay, tireFahrenheit: 110, outdoorFahrenheit: 40, tires: 'driven' })).toMatchObject({
      psi: 41,
      capped: true,
    })
  })

  it('is the label’s figure where the tire is no warmer than outdoors, and where nobody measured the tire', () => {
    expect(setTarget({ ...bay, tireFahrenheit: 60, outdoorFahrenheit: 95 })).toMatchObject({
      psi: 35,
      capped: false,
    })
    expect(setTarget({ ...bay, tireFahrenheit: null })).toMatchObject({ psi: 35, quality: 'assumed' })
    expect(setTarget({ ...bay, tireFahrenheit: null }).says).toContain('Measure it.')
    expect(setTarget({ ...bay, tires: 'cold', tireFahrenheit: null }).says).toBe(
      "The label's 35 psi, as it is.",
    )
  })

  it('is never below the label nor above the sidewall’s maximum', () => {
    fc.assert(
      fc.property(
        fc.record({
          placardPsi: fc.integer({ min: 26, max: 80 }),
          sidewallMaximumPsi: fc.integer({ min: 80, max: 100 }),
          outdoorFahrenheit: fc.integer({ min: -40, max: 120 }),
          tireFahrenheit: fc.option(fc.integer({ min: -40, max: 180 })),
          tires: fc.constantFrom('cold', 'driven', 'indoor-warmed'),
          altitudeFeet: fc.integer({ min: -200, max: 12_000 }),
        }),
        (of) => {
          const { psi } = setTarget(of)
          expect(psi).toBeGreaterThanOrEqual(of.placardPsi)
          expect(psi).toBeLessThanOrEqual(of.sidewallMaximumPsi)
        },
      ),
      { seed: 20260112, numRuns: 500 },
    )
  })
})
