import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type AfterKey,
  afterKey,
  afterRest,
  type Burst,
  burstGapMilliseconds,
  type Focus,
  isOver,
} from './key-burst.ts'

const fitsVin = (text: string) => /^[A-Z0-9]{17}$/.test(text.trim())
const vin = '1ZZ12AB4XR0000004'

type Typed = { readonly page: string; readonly end: ReturnType<typeof afterRest> | null }

/** Types keys, each so many milliseconds after the one before, on a page that writes down what it gets. */
const type = (
  keys: readonly string[],
  gap: number | readonly number[],
  focus: Focus,
  fits = fitsVin,
): Typed => {
  let burst: Burst | null = null
  let at = 1_000
  let page = ''
  const settle = () => {
    const end = burst === null ? null : afterRest(burst, fits)
    if (end?.what === 'typed') page += end.held
    burst = null
    return end
  }
  keys.forEach((key, index) => {
    at += typeof gap === 'number' ? gap : (gap[index] ?? 0)
    if (isOver(burst, at)) settle()
    const held: string = (burst as Burst | null)?.held ?? ''
    const answer: AfterKey = afterKey(burst, { key, at, focus }, fits)
    if (answer.page === 'held-first') page += held
    if (answer.page !== 'nothing') page += key.length === 1 ? key : `<${key}>`
    burst = answer.burst
  })
  return { end: settle(), page }
}

describe('a scanner that types', () => {
  it.each(['Enter', 'Tab'])('is taken as one scan that ends in %s, and no button gets that key', (end) => {
    for (const gap of [0, 1, 12, burstGapMilliseconds])
      expect(type([...vin, end], gap, 'elsewhere')).toEqual({ page: '1', end: { what: 'scan', text: vin } })
  })

  it('in a field leaves two signs at most, which are taken out again', () => {
    expect(type([...vin, 'Enter'], 8, 'text')).toEqual({ page: '1Z', end: { what: 'scan', text: vin } })
  })

  it('may send line after line, or carriage return and line feed', () => {
    const lines = ['LF 1A2B3C10', 'RF 1A2B3C11']
    const keys = lines.flatMap((line) => [...line, 'Enter', 'Enter'])
    const end = type(keys, 5, 'elsewhere', (text) => text.startsWith('LF')).end
    expect(end).toEqual({ what: 'scan', text: 'LF 1A2B3C10\n\nRF 1A2B3C11' })
  })

  it('may send no Enter at all, where its text fits', () => {
    expect(type([...vin], 3, 'text').end).toEqual({ what: 'scan', text: vin })
  })

  it('that nothing takes presses no button either', () => {
    expect(type([...'HELLO WORLD', 'Enter'], 5, 'elsewhere')).toEqual({
      page: 'H',
      end: { what: 'no-place', text: 'HELLO WORLD' },
    })
  })

  it('that nothing takes stays in the field with the focus, Enter included', () => {
    expect(type([...'HELLO WORLD', 'Enter'], 5, 'text')).toEqual({ page: 'HELLO WORLD<Enter>', end: null })
  })

  it('is not mixed up with what a hand typed just before it', () => {
    const gaps = [0, 300, ...[...vin].map((_, index) => (index === 0 ? 400 : 4)), 4]
    expect(type(['a', 'b', ...vin, 'Enter'], gaps, 'text')).toEqual({
      page: 'ab1Z',
      end: { what: 'scan', text: vin },
    })
  })
})

describe('a control that takes keys and is no text', () => {
  it('gets every sign, for none could be put back, and no Enter of a scanner', () => {
    expect(type([...'0230', 'Enter'], 20, 'control').page).toBe('0230<Enter>')
    expect(type([...'02302026', 'Enter'], 8, 'control')).toEqual({
      page: '02302026',
      end: { what: 'no-place', text: '02302026' },
    })
  })
})

describe('a hand that types', () => {
  it('gets every key through in its order, however quick two or three of them are', () => {
    const keys = fc.array(fc.constantFrom('a', 'b', '1', ' ', 'Enter', 'Tab'), { maxLength: 30 })
    fc.assert(
      fc.property(keys, fc.infiniteStream(fc.integer({ min: 0, max: 140 })), (typed, stream) => {
        // No four keys of a hand follow each other within the gap of a scanner.
        let quick = 0
        const gaps = typed.map(() => {
          const gap = stream.next().value
          quick = gap <= burstGapMilliseconds ? quick + 1 : 0
          if (quick < 3) return gap
          quick = 0
          return gap + burstGapMilliseconds + 1
        })
        const expected = typed.map((key) => (key.length === 1 ? key : `<${key}>`)).join('')
        expect(type(typed, gaps, 'text', () => true).page).toBe(expected)
      }),
    )
  })

  it('presses the button that has the focus with Enter', () => {
    expect(type(['Enter'], 500, 'elsewhere').page).toBe('<Enter>')
    expect(type(['a', 'Enter'], 20, 'elsewhere').page).toBe('a<Enter>')
  })
})
