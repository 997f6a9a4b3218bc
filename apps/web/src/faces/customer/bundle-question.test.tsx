import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { AgreedLook, BundleQuestion } from './bundle-question.tsx'
import type { Offer } from './estimate-answers.ts'

const offer: Offer = {
  bundleKey: 'sensor.RR',
  title: 'New sensor, right rear',
  reason: 'The sensor in the right rear wheel does not work.',
  removesDanger: false,
  alternativeTo: null,
  conditional: false,
  lines: [{ lineKey: 'sensor', words: 'Wheel sensor', amountCents: 6_800 }],
  taxCents: 425,
  totalCents: 15_140,
  cautions: [{ number: 'CT-01', version: 2, words: 'Check the air in all tires with a gauge every week.' }],
  since: null,
  answer: null,
  agreedBefore: false,
  answerable: true,
  mayTakeBack: false,
}

const asked = (change: Partial<Parameters<typeof BundleQuestion>[0]> = {}): string =>
  renderToStaticMarkup(
    <BundleQuestion
      offer={offer}
      insteadOf={null}
      isReasonSaid={false}
      cautions={offer.cautions}
      isAsked
      mayDrive
      answer={null}
      onAnswer={() => undefined}
      {...change}
    />,
  )

describe('an offer on the phone', () => {
  it('has its price and its question before what is in it, and is named for whoever hears it', () => {
    const html = asked()
    expect(html.indexOf('$151.40')).toBeLessThan(html.indexOf('Do you want this?'))
    expect(html.indexOf('Not today')).toBeLessThan(html.indexOf('See each price'))
    expect(html).toMatch(/<legend[^>]*><span class="for-screen-readers">New sensor, right rear: <\/span>/)
  })

  it('gives its reason once: not below the finding that says it', () => {
    expect(asked()).toContain(offer.reason)
    expect(asked({ isReasonSaid: true })).not.toContain(offer.reason)
  })

  it('shows its caution with a No or a Not today, and not with a Yes', () => {
    const caution = offer.cautions[0]?.words ?? ''
    expect(asked({ answer: 'declined' })).toContain(caution)
    expect(asked({ answer: 'deferred' })).toContain(caution)
    expect(asked({ answer: 'authorized' })).not.toContain(caution)
  })
})

describe('the inspection that was agreed before', () => {
  const look = { ...offer, title: 'Inspection', totalCents: 0, agreedBefore: true, answerable: false }

  it('says what is owed with these answers and by which terms, and no price of nothing beside it', () => {
    const html = renderToStaticMarkup(
      <AgreedLook offer={look} look={{ terms: 'waived-with-work', cents: 5_200 }} cents={5_200} />,
    )
    expect(html).toContain('$52.00')
    expect(html).toContain('It is free if you say Yes to any work, and $52.00 if not.')
    expect(html).not.toContain('See each price')
  })

  it('shows its lines where it is charged whatever is answered', () => {
    const html = renderToStaticMarkup(
      <AgreedLook offer={look} look={{ terms: 'charged', cents: 5_200 }} cents={5_200} />,
    )
    expect(html).toContain('It is charged whatever you answer.')
    expect(html).toContain('See each price')
  })
})
