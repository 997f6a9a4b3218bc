import { Offer } from '@bayledger/reckoning/diagnosis/diagnosis'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import { offerBundles } from '@bayledger/reckoning/money/offer-bundles'
import { unsoldOffers } from '@bayledger/reckoning/money/unsold-offers'
import { english } from '@bayledger/wording/en/english'
import { wheelList } from '@bayledger/wording/wheels'
import { describe, expect, it } from 'vitest'
import { finding } from '../../packages/reckoning/src/money/demo-prices.test-support.ts'
import { utilitySheet } from '../../packages/reckoning/test-support/utility-sheet.ts'

/** Offers of the findings that this shop sells nothing for; the desk reads why. */
const soldElsewhere: ReadonlySet<Offer> = new Set<Offer>(['sensor-clean', 'outside-work'])

const offeredFor = (offer: Offer) => {
  const offers: Offer[] = offer === 'set-of-four' ? ['sensor', offer] : [offer]
  const findings = [finding('tire-low', ['LF'], offers)]
  const stop =
    offer === 'tire' ? [{ ...finding('tire-unsafe', ['LF'], offers), kind: 'stop' as const }] : findings
  const bundles = offerBundles({
    diagnosis: {
      ruleSet: '4',
      primary: null,
      findings: stop,
      contradictions: [],
      unchecked: [],
      nextChecks: [],
    },
    sheet: utilitySheet,
    prices: firstPrices,
    look: 'waived',
    opened: { searched: [], repairable: [] },
  })
  return { sold: bundles.filter(({ title }) => title !== 'look'), unsold: unsoldOffers(stop, bundles) }
}

describe('whatever a finding offers', () => {
  it.each(Offer.options)('%s is sold by this shop, or the desk reads why it is not', (offer) => {
    const { sold, unsold } = offeredFor(offer)
    expect(unsold.map((one) => one.offer)).toEqual(soldElsewhere.has(offer) ? [offer] : [])
    expect(sold.length > 0).toBe(!soldElsewhere.has(offer))
    for (const one of unsold)
      expect(english.unsoldOffers[one.offer](wheelList(english.wheels, one.wheels))).toMatch(
        /left front.*\.$/,
      )
  })

  it.each(['tire', 'fastener-repair'] as const)(
    '%s without a price in the list is told as missing',
    (offer) => {
      const findings = [finding('tire-low', ['LF', 'RR'], [offer])]
      expect(unsoldOffers(findings, [])).toEqual([{ offer, wheels: ['LF', 'RR'] }])
      expect(english.unsoldOffers[offer]('left front')).toContain('no price')
    },
  )
})
