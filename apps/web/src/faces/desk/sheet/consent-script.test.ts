import { english } from '@bayledger/wording/en/english'
import type { ShownBundle } from '@bayledger/wording/shown-estimate'
import { describe, expect, it } from 'vitest'
import { type ScriptAround, scriptFor } from './consent-script.ts'

const bundle = (bundleKey: string, totalCents: number, change: Partial<ShownBundle> = {}): ShownBundle => ({
  ...{ bundleKey, title: `Offer ${bundleKey}`, reason: '', alternativeTo: null, conditional: false },
  ...{ lines: [], taxCents: 0, totalCents, cautions: [] },
  ...change,
})
const bundles = [bundle('A', 19_384), bundle('B', 5_000)]
const around: ScriptAround = {
  vehicle: 'silver sedan',
  found: ['The right rear sensor does not work.'],
  ready: '3:40 PM',
  look: { terms: 'waived-with-work', cents: 5_200 },
  worksAnyway: false,
  dueBefore: null,
}
const offered =
  'For your silver sedan: The right rear sensor does not work. We offer: Offer A, $193.84 with tax; Offer B, $50.00 with tax. If you say yes now, it will be ready by 3:40 PM.'
const said = (given: Parameters<typeof scriptFor>[3], change: Partial<ScriptAround> = {}) =>
  scriptFor(english.consentScript, { ...around, ...change }, bundles, given, new Set())

describe('what is read out by telephone', () => {
  it('says what was found, each price and by when it is ready, and no sum before an answer', () => {
    expect(said({})).toBe(`${offered} What do you want us to do?`)
  })

  it('names the sum of what is agreed to', () => {
    expect(said({ A: 'authorized', B: 'declined' })).toBe(
      `${offered} You say yes to Offer A: $193.84 in all. Is that right?`,
    )
  })

  it('says what is owed after No', () => {
    expect(said({ A: 'declined', B: 'deferred' })).toBe(
      `${offered} You say yes to none of it. You owe $52.00 for the inspection, as agreed. Is that right?`,
    )
    expect(said({ A: 'declined', B: 'declined' }, { look: { terms: 'waived', cents: 0 } })).toContain(
      'none of it. You owe nothing for it.',
    )
  })

  it('adds the inspection where it is charged in any case', () => {
    expect(said({ A: 'authorized' }, { look: { terms: 'charged', cents: 5_200 } })).toContain(
      'Offer A: $245.84 in all, with $52.00 for the inspection.',
    )
  })

  it('names the new sum of the whole order where work was agreed to before', () => {
    const before = { worksAnyway: true, dueBefore: 10_000 }
    expect(said({ A: 'authorized', B: 'declined' }, before)).toContain(
      'You say yes to Offer A: $193.84. With what you agreed to before, it is $293.84 in all. Is that right?',
    )
    const takesBack = scriptFor(
      english.consentScript,
      { ...around, ...before },
      bundles,
      { A: 'authorized', B: 'declined' },
      new Set(['B']),
    )
    expect(takesBack).toContain('Offer A: $193.84 in all.')
  })

  it('is silent about the inspection where work was agreed to before', () => {
    expect(said({ A: 'declined', B: 'declined' }, { worksAnyway: true })).toContain('You owe nothing for it.')
  })
})
