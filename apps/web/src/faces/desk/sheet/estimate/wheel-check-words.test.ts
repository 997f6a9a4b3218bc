import { millimeters as mm } from '@bayledger/reckoning/units/measured'
import { imbalance } from '@bayledger/reckoning/wheel/imbalance'
import { type WheelFitOf, wheelFit } from '@bayledger/reckoning/wheel/wheel-fit'
import { expect, it } from 'vitest'
import { imbalanceWords, wheelFitWords } from './wheel-check-words.ts'

const own = { holes: 5, boltCircle: mm(114.3), hub: mm(67.1), rim: { widthInches: 7, offset: mm(45) } }
const of: WheelFitOf = {
  vehicle: own,
  wheel: { ...own, hub: mm(73.1), rim: { widthInches: 8, offset: mm(35) } },
  seats: { fastener: 'cone', wheel: 'cone' },
  thread: 'M12×1.5',
  turns: 7,
  sheetTurns: 6.5,
}
const governs = expect.stringMatching(/govern\.$/)

it('says of another wheel what it needs and where it comes to lie', () => {
  expect(wheelFitWords(wheelFit(of))).toEqual([
    'Holes, hub, seats and turns agree.',
    expect.stringMatching(/^Its bore is 6\.0 mm wider than the hub: it needs a centering ring/),
    expect.stringMatching(/less than one diameter of the thread, which is 8:/),
    expect.stringMatching(/^Its middle moves 10 mm out: two of them make the track 20 mm wider/),
    expect.stringMatching(/outer edge comes 22\.7 mm nearer to the fender, its inner edge 2\.7 mm nearer to/),
    governs,
  ])
})

it('says every reason against one, and what nobody has measured', () => {
  const words = wheelFitWords(
    wheelFit({
      ...of,
      wheel: { holes: 6, boltCircle: null, hub: mm(60), rim: null },
      seats: { fastener: 'cone', wheel: 'flat' },
      turns: 6,
    }),
  )
  expect(words[0]).toBe('Do not fit it.')
  expect(words).toHaveLength(8)
  expect(words).toContain('The turns are fewer than the sheet says.')
  expect(words).toContain('Not measured: the bolt circle, width and offset.')
})

it('says that a wheel with the own figures comes to lie where the own one does', () => {
  expect(wheelFitWords(wheelFit({ ...of, wheel: own, turns: 9 }))).toEqual([
    'Holes, hub, seats and turns agree.',
    'The wheel comes to lie where the own one does.',
    governs,
  ])
})

it('says what is left after balancing, against the limit and as a pull', () => {
  const left = imbalance({
    grams: { inner: 14.2, outer: 0 },
    rimInches: 16,
    tireDiameter: mm(632),
    milesPerHour: 60,
    on: 'car',
  })
  expect(imbalanceWords(left, 'car')).toEqual([
    'The heavier side has 14 g left. That is over the 10 g that a side may have: balance it again.',
    'At 60 mph it pulls with up to 4.7 lbf (21 N), 14 times a second.',
    governs,
  ])
  expect(imbalanceWords({ ...left, grams: 7, isOver: false }, 'car')[0]).toBe(
    'The heavier side has 7 g left. A side may have 10 g.',
  )
})
