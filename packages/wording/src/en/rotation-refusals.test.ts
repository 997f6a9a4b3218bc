import { patternMoves } from '@bayledger/reckoning/rotation/rotation-pattern'
import { type RotatingTire, rotationRefusals } from '@bayledger/reckoning/rotation/rotation-refusals'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { expect, it } from 'vitest'
import { stillAllowed, tiresRefuse } from './rotation-refusals.ts'

const tire = (text: string, change: Partial<RotatingTire> = {}): RotatingTire => {
  const read = readTireSize(text)
  if (!read.ok) throw new RangeError(read.do)
  return { size: read.value, directional: false, temporary: false, ...change }
}
const alike = tire('235/60R18 103H')
const five = { LF: alike, RF: alike, RR: alike, LR: alike, SP: alike }
const said = (
  pattern: Parameters<typeof patternMoves>[0],
  change: Partial<Record<keyof typeof five, RotatingTire | null>>,
) => tiresRefuse(rotationRefusals(patternMoves(pattern), { ...five, ...change }))

it('what the tires refuse is one sentence for each reason, with its wheels', () => {
  const arrow = tire('235/60R18 103H', { directional: true })
  expect(said('cross', { LF: arrow })).toBe(
    'The left front tire has an arrow: it rolls one way only and stays on its side of the vehicle.',
  )
  expect(said('cross', { LF: arrow, RF: arrow, RR: arrow, LR: arrow })).toBe(
    'All four tires have an arrow: they roll one way only and stay on their side of the vehicle.',
  )
  expect(said('five-rearward-cross', { SP: arrow })).toMatch(
    /^The spare tire has an arrow: .* out of the spare’s place\.$/,
  )
  expect(said('five-rearward-cross', { SP: tire('235/60R18 103H', { temporary: true }) })).toBe(
    'The spare is a temporary one and takes no part.',
  )
  expect(said('front-to-back', { LF: tire('235/60R18 102H') })).toBe(
    'The left front tire is 235/60R18 102H: it may not take the load of 235/60R18 103H, which was there.',
  )
  const wide = tire('275/35R18 103H')
  expect(said('front-to-back', { LR: wide, RR: wide })).toBe(
    'The right rear and left rear tires are 275/35R18 103H: they may not go where 235/60R18 103H was. The left front and right front tires are 235/60R18 103H: they may not go where 275/35R18 103H was.',
  )
  expect(said('cross', { LF: null })).toBe('Read the size on each tire: not known of left front.')
})

it('what is still allowed is named as the desk offers it', () => {
  expect(stillAllowed(['front-to-back'])).toBe('Still allowed: front to back, each side by itself.')
  expect(stillAllowed([])).toMatch(/every wheel stays where it is\.$/)
})
