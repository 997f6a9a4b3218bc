import { describe, expect, it } from 'vitest'
import {
  askedOf,
  dangerFirst,
  type Offer,
  openQuestions,
  stillAsked,
  sumsOf,
  wantedIn,
  withAnswer,
  workAhead,
} from './estimate-answers.ts'

const offer = (bundleKey: string, change: Partial<Offer> = {}): Offer => ({
  bundleKey,
  title: bundleKey,
  reason: '',
  removesDanger: false,
  alternativeTo: null,
  conditional: false,
  lines: [],
  taxCents: 0,
  totalCents: 10_000,
  cautions: [],
  since: null,
  answer: null,
  agreedBefore: false,
  answerable: true,
  mayTakeBack: false,
  ...change,
})

const look = offer('look', { totalCents: 5_200, agreedBefore: true, answerable: false })
const bundles = [offer('one'), offer('four', { alternativeTo: 'one', totalCents: 40_000 }), look]
const charged = { terms: 'charged', cents: 5_200 } as const
const withWork = { terms: 'waived-with-work', cents: 5_200 } as const

describe('an answer on the phone', () => {
  it('is asked once for each offer, and again only for what was put off, on request', () => {
    const later = [offer('one', { answer: 'deferred' }), offer('two'), look]
    expect(askedOf({ bundles: later }, null).map(({ bundleKey }) => bundleKey)).toEqual(['two'])
    expect(askedOf({ bundles: later }, 'put-off').map(({ bundleKey }) => bundleKey)).toEqual(['one', 'two'])
  })

  it('takes back a Yes on request, and asks no more than that', () => {
    const yes = offer('one', { answer: 'authorized', answerable: false, mayTakeBack: true })
    const begun = offer('two', { answer: 'authorized', answerable: false })
    const estimate = { bundles: [yes, begun, look] }
    expect(askedOf(estimate, null)).toEqual([])
    expect(askedOf(estimate, 'put-off')).toEqual([])
    expect(askedOf(estimate, 'take-back')).toEqual([yes])
    expect(openQuestions([yes], {})).toBe(1)
    expect(openQuestions([yes], { one: 'declined' })).toBe(0)
    expect(openQuestions([yes, offer('three')], { one: 'declined' })).toBe(1)
    expect([...wantedIn(estimate, { one: 'declined' })]).toEqual(['two'])
  })

  it('that was filled in and not sent gives way to one that was sent from another phone', () => {
    const filledIn = { one: 'authorized', two: 'authorized' } as const
    const estimate = { bundles: [offer('one', { answer: 'declined', answerable: false }), offer('two')] }
    const answers = stillAsked(askedOf(estimate, null), filledIn)
    expect(answers).toEqual({ two: 'authorized' })
    expect(sumsOf({ ...estimate, look: charged }, answers).totalCents).toBe(15_200)
  })

  it('says that work was begun once a Yes cannot be taken back', () => {
    const yes = offer('one', { answer: 'authorized', answerable: false, mayTakeBack: true })
    const begun = { ...yes, bundleKey: 'two', mayTakeBack: false }
    expect(workAhead({ bundles: [yes, offer('two', { answer: 'declined' }), look] })).toBe('to-begin')
    expect(workAhead({ bundles: [yes, begun, look] })).toBe('begun')
    expect(workAhead({ bundles: [{ ...begun, conditional: true }, look] })).toBe('none')
  })

  it('takes one of two alternatives', () => {
    const one = withAnswer({ bundles }, {}, 'one', 'authorized')
    expect(one).toEqual({ one: 'authorized', four: 'declined' })
    expect(withAnswer({ bundles }, one, 'four', 'authorized')).toEqual({
      one: 'declined',
      four: 'authorized',
    })
    expect(withAnswer({ bundles }, {}, 'one', 'declined')).toEqual({ one: 'declined' })
  })

  it('does not answer again what was answered before', () => {
    const before = [offer('one', { answer: 'declined', answerable: false }), bundles[1] as Offer]
    expect(withAnswer({ bundles: before }, {}, 'four', 'authorized')).toEqual({ four: 'authorized' })
  })

  it.each([
    [charged, {}, 5_200, 5_200],
    [charged, { one: 'authorized' }, 5_200, 15_200],
    [charged, { one: 'declined', four: 'declined' }, 5_200, 5_200],
    [withWork, { one: 'authorized' }, 0, 10_000],
    [withWork, { one: 'declined', four: 'deferred' }, 5_200, 5_200],
    [{ terms: 'waived', cents: 0 } as const, { one: 'declined' }, 0, 0],
  ] as const)(
    'with the inspection %o and the answers %o costs %i of %i cents',
    (terms, answers, lookCents, totalCents) => {
      expect(sumsOf({ bundles, look: terms }, answers)).toEqual({ lookCents, totalCents })
    },
  )

  it('counts what was answered before', () => {
    const before = [offer('one', { answer: 'authorized', answerable: false }), offer('two'), look]
    expect([...wantedIn({ bundles: before }, {})]).toEqual(['one'])
    expect(sumsOf({ bundles: before, look: withWork }, { two: 'declined' }).totalCents).toBe(10_000)
  })
})

it('what removes a danger is asked about before the rest', () => {
  const bundles = [offer('sensor'), offer('tire', { removesDanger: true })]
  expect(dangerFirst(bundles).map(({ bundleKey }) => bundleKey)).toEqual(['tire', 'sensor'])
})

it('counts nothing of what is only for a case that may never come, nor waives the inspection for it', () => {
  const only = offer('if', { conditional: true })
  const terms = { terms: 'waived-with-work', cents: 5_200 } as const
  expect(sumsOf({ bundles: [only], look: terms }, { if: 'authorized' })).toEqual({
    lookCents: 5_200,
    totalCents: 5_200,
  })
})
