import { expect, it } from 'vitest'
import { reportContext } from '../../test-support/worked-context.ts'
import { workedSheet } from '../../test-support/worked-sheet.ts'
import { workedState } from '../../test-support/worked-state.ts'
import { coldMargin } from './cold-margin.ts'

const words = (change: Partial<typeof workedState> = {}): string =>
  coldMargin({ ...workedState, ...change }, reportContext)
    .map((block) => (block.kind === 'paragraph' ? block.text : ''))
    .join()
const withSheet = (change: Partial<typeof workedSheet>) => ({
  sheet: workedState.sheet && { ...workedState.sheet, sheet: { ...workedSheet, ...change } },
})

// By hand: 37.5 psi at 52 °F and 820 ft (14.27 psi of air) are 34.97 at 27 °F, 8.7 over 26.25 and 5.0 over 30.
// (26.25 + 14.27) / (37.5 + 14.27) · 511.67 are 400.5 degrees Rankine, -59 °F; for 30 psi they are 437.5, -22 °F.
it('names the wheels nearest to the light, by how much they are over the warning point and the cold that lights it', () => {
  expect(words()).toBe(
    'Nearest to the warning light are the right front and left rear, once cold, as left, 8.7 psi over the warning point of the rule; the maker’s own may lie higher. With no leak, no cold down to −40 °F would light it.',
  )
})

it('names no wheel where all are alike', () => {
  const work = Object.fromEntries(
    Object.entries(workedState.work).map(([wheel, done]) => [
      wheel,
      done.pressure
        ? { ...done, pressure: { ...done.pressure, asLeft: { value: 37.5, unit: 'psi' as const } } }
        : done,
    ]),
  )
  expect(words({ work })).toMatch(/^All 4 road tires are alike, each once cold, as left, 8\.7 psi over/)
})

it('goes by the maker’s own warning point where the sheet has one', () => {
  expect(words(withSheet({ warnAtPsi: { front: 30, rear: 30, spare: null } }))).toBe(
    'Nearest to the warning light are the right front and left rear, once cold, as left, 5.0 psi over the maker’s warning point. With no leak, cold alone would light it at about −22 °F.',
  )
})

it('is left out for a vehicle that does not measure pressures, and where nobody set a tire', () => {
  expect(words(withSheet({ system: 'indirect' }))).toBe('')
  expect(words({ work: {} })).toBe('')
})

it('is left out for a warm tire whose temperature nobody read', () => {
  const work = Object.fromEntries(
    Object.entries(workedState.work).map(([wheel, done]) => [
      wheel,
      done.pressure
        ? {
            ...done,
            pressure: { ...done.pressure, surroundings: { ...done.pressure.surroundings, tire: null } },
          }
        : done,
    ]),
  )
  expect(words({ work })).toBe('')
})
