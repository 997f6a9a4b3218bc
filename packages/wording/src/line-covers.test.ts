import type { EstimateLine } from '@bayledger/reckoning/estimate'
import type { Cover, LineCover } from '@bayledger/reckoning/money/line-cover'
import { describe, expect, it } from 'vitest'
import { english } from './en/english.ts'
import { spanish } from './es/spanish.ts'
import { coverNote, coverSentence } from './line-covers.ts'

const sensor: EstimateLine = {
  ...{ lineKey: 'sensor', kind: 'part', code: 'sensor', words: null, wheels: ['RR'], sensor: null },
  ...{ priceCode: 'sensor', quantityHundredths: 100, unitCents: 0, amountCents: 0, taxClass: 'parts' },
  cover: { listCents: 5_900, why: null },
}
const covered: Cover = {
  ...{ is: 'covered', term: 'sensor', orderNumber: 'T-2581' },
  ...{ until: '2027-12-31', untilMiles: 64_000 },
}
const charged = (why: Extract<Cover, { is: 'charged' }>['why']): Cover => ({
  ...{ is: 'charged', why, until: '2026-12-31', untilMiles: 64_000 },
})
const of = (judged: Cover, decided: LineCover['decided'] = null): LineCover[] => [
  { lineKey: 'sensor', judged, decided },
]
const withoutCover = ({ cover: _, ...line }: EstimateLine): EstimateLine => ({ ...line, amountCents: 5_900 })

describe('what a customer reads of a warranty', () => {
  it('is what a covered line costs, what it would cost, by which order and until when', () => {
    expect(coverSentence(english.lineCovers, sensor, of(covered))).toBe(
      'Covered by our warranty: $0.00 (would be $59.00). We put in this sensor on order T-2581. The warranty is good until Dec 31, 2027 or 64,000 miles.',
    )
    expect(coverSentence(spanish.lineCovers, sensor, of(covered))).toBe(
      'Lo cubre nuestra garantía: $0.00 (costaría $59.00). Pusimos este sensor en la orden T-2581. La garantía vale hasta el 31 de diciembre de 2027 o hasta 64,000 millas.',
    )
  })

  it('is why a line is not covered, in a short sentence in either language', () => {
    const reasons = Object.keys(english.lineCovers.charged) as Extract<Cover, { is: 'charged' }>['why'][]
    for (const { lineCovers } of [english, spanish])
      for (const why of reasons) {
        const sentence = coverSentence(lineCovers, withoutCover(sensor), of(charged(why))) ?? ''
        expect(sentence.split(' ').length).toBeLessThanOrEqual(14)
        expect(sentence).toMatch(/^(Our warranty does not cover this|Nuestra garantía no cubre esto): .+\.$/)
      }
    expect(coverSentence(english.lineCovers, withoutCover(sensor), of(charged('days-over')))).toContain(
      'it ended on Dec 31, 2026.',
    )
    expect(coverSentence(spanish.lineCovers, withoutCover(sensor), of(charged('miles-over')))).toContain(
      'terminó a las 64,000 millas.',
    )
  })

  it('is the reason of whoever decided otherwise, in their words', () => {
    const by = (why: string): EstimateLine => ({ ...sensor, cover: { listCents: 5_900, why } })
    expect(
      coverSentence(english.lineCovers, by('You waited long'), of(charged('days-over'), 'covered')),
    ).toBe('You do not pay for this: $0.00 (would be $59.00). The reason: You waited long')
    expect(coverSentence(english.lineCovers, by('It was hit'), of(covered, 'charged'))).toBe(
      'Our warranty does not cover this. The reason: It was hit',
    )
  })

  it('is nothing where nobody judged, and nothing before a person has decided', () => {
    expect(coverSentence(english.lineCovers, sensor, undefined)).toBeNull()
    const open: Cover = { is: 'open', until: '2027-12-31', untilMiles: null }
    expect(coverSentence(english.lineCovers, sensor, of(open))).toBeNull()
    expect(coverNote(english.lineCovers, [withoutCover(sensor)], of(open))).toBeNull()
  })

  it('is for a whole offer how much is covered, and each reason why the rest is not, once', () => {
    const other = { ...withoutCover(sensor), lineKey: 'wheel-service', amountCents: 2_800 }
    const third = { ...other, lineKey: 'relearn' }
    const covers = [
      ...of(covered),
      { lineKey: 'wheel-service', judged: charged('days-over'), decided: null },
      { lineKey: 'relearn', judged: charged('days-over'), decided: null },
    ]
    expect(coverNote(english.lineCovers, [sensor, other, third], covers)).toBe(
      'Our warranty covers $59.00 of this, before tax. Our warranty does not cover this: it ended on Dec 31, 2026.',
    )
  })
})
