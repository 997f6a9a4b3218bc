import { describe, expect, it } from 'vitest'
import { utilitySheet } from '../../test-support/utility-sheet.ts'
import { askedBundle } from './asked-bundles.ts'
import type { AskedJob } from './asked-jobs.ts'
import { chargedTwice } from './charged-twice.ts'
import { demoPrices as prices } from './demo-prices.test-support.ts'
import { ifStemBreaks } from './if-stem-breaks.ts'
import type { OfferedBundle } from './offer.ts'
import { priceEstimate } from './price-estimate.ts'

const asked = (job: AskedJob): OfferedBundle => askedBundle(job, prices, utilitySheet)
const priced = (bundles: readonly OfferedBundle[]) =>
  priceEstimate({ bundles, prices, revision: 1, readyAt: null }).bundles
const sensor = asked({ kind: 'sensors', wheels: ['RR'] })
const stems = asked({ kind: 'stems', wheels: ['LF', 'RR'] })
const relearn = asked({ kind: 'relearn' })

describe('what several bundles charge for and is done once', () => {
  it('is a tire that is taken off for two jobs, and stem parts that come with a sensor', () => {
    const both = { wheels: ['RR'], bundleKeys: [sensor.bundleKey, stems.bundleKey] }
    expect(chargedTwice(priced([sensor, stems]))).toEqual([
      { what: 'tire-off', ...both },
      { what: 'stem-parts', ...both },
    ])
  })

  it('is what the vehicle has to learn, whichever wheels it is for', () => {
    expect(chargedTwice(priced([sensor, relearn]))).toEqual([
      { what: 'learning', wheels: [], bundleKeys: [sensor.bundleKey, relearn.bundleKey] },
    ])
  })

  it('is nothing where the wheels are others, or only one of the two can be chosen', () => {
    const front = asked({ kind: 'stems', wheels: ['LF'] })
    expect(chargedTwice(priced([sensor, front]))).toEqual([])
    expect(chargedTwice(priced([sensor, { ...stems, alternativeTo: sensor.bundleKey }]))).toEqual([])
    const third = { ...relearn, alternativeTo: front.bundleKey }
    expect(chargedTwice(priced([front, { ...sensor, alternativeTo: front.bundleKey }, third]))).toEqual([])
  })

  it('is nothing that is printed without a charge, and nothing for a case that may not come', () => {
    expect(chargedTwice(priced([asked({ kind: 'pressures' }), relearn]))).toEqual([])
    const question = ifStemBreaks(prices, utilitySheet, [stems])
    if (question === null) throw new RangeError('a metal stem is loosened for new stems')
    expect(chargedTwice(priced([stems, question]))).toEqual([])
  })
})
