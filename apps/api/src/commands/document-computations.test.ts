import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { missingDocstrings } from './computations/missing-docstrings.ts'
import { computationsPage } from './computations/page.ts'
import { computationsOf, readReckoning } from './computations/read-docstrings.ts'
import { computationRooms } from './computations/rooms.ts'
import { givesWords, takesWords } from './computations/type-words.ts'

const root = new URL('../../../../', import.meta.url)
const reckoning = readReckoning(
  fileURLToPath(new URL('packages/reckoning/src', root)),
  Object.keys(computationRooms),
)

describe('docs/computations.md', () => {
  it('is what the docstrings say today; else run npm run docs:computations', () => {
    const page = readFileSync(new URL('docs/computations.md', root), 'utf8')
    expect(page).toBe(computationsPage(reckoning, computationRooms))
  })

  it('holds every room', () => {
    for (const room of Object.keys(computationRooms))
      expect(
        reckoning.computations.filter((one) => one.room === room).length,
        `computations of ${room}`,
      ).toBeGreaterThan(0)
    expect(reckoning.computations.length).toBeGreaterThan(100)
  })
})

describe('an exported function of reckoning', () => {
  it('says what it does and from where', () => {
    expect(missingDocstrings(reckoning.computations)).toEqual([])
  })

  it('would be named where it does not', () => {
    const planted = computationsOf(
      'units',
      'units/planted.ts',
      [
        '/** Twice a pressure. */',
        'export const twice = (pressure: number): number => pressure * 2',
        'export function half(pressure: number): number { return pressure / 2 }',
        '/** @source arithmetic */',
        'export const wordless = (): number => 0',
      ].join('\n'),
    )
    expect(missingDocstrings(planted)).toEqual([
      expect.stringMatching(/^packages\/reckoning\/src\/units\/planted\.ts: twice has no @source; write /),
      expect.stringMatching(/units\/planted\.ts: half has no docstring; write /),
      expect.stringMatching(/units\/planted\.ts: wordless has no docstring; write /),
    ])
  })
})

describe('a docstring', () => {
  const [shown, figure] = computationsOf(
    'units',
    'units/planted.ts',
    [
      'type Planted = { readonly airBefore: Kelvin; readonly by: 1 | null; readonly unused: string }',
      '/**',
      ' * Two lines',
      ' * of prose.',
      ' *',
      ' * @formula a + b,',
      ' * then c',
      ' * @source arithmetic',
      ' */',
      "export const shown = ({ airBefore, by }: Planted, days: readonly Day[]): Reading<Day, 'late'> => 0",
      '/** @source arithmetic */',
      'export const figure = 7',
      'export const sourceless = 8',
      'const hidden = () => 0',
    ].join('\n'),
  )

  it('is read with its prose and tags, each in one line', () => {
    expect(shown).toMatchObject({
      name: 'shown',
      prose: 'Two lines of prose.',
      tags: { formula: 'a + b, then c', source: 'arithmetic' },
    })
  })

  it('of a figure is read where it has a source', () => {
    expect(figure).toMatchObject({ name: 'figure', signature: null })
  })

  it('is shown beside a signature in words', () => {
    const signature = shown?.signature
    if (!signature) throw new Error('no signature was read')
    expect(takesWords(signature, reckoning.types)).toBe('of (planted), days (list of day)')
    expect(givesWords(signature, reckoning.types)).toBe('day, or a refusal in words')
  })

  it('takes the unit of a number from its type', () => {
    const shift = reckoning.computations.find(({ name }) => name === 'shiftPressure')?.signature
    if (!shift) throw new Error('shiftPressure was not read')
    expect(takesWords(shift, reckoning.types)).toBe(
      'gauge (kPa gauge), from (K), to (K), air before (kPa absolute), air after (kPa absolute)',
    )
    expect(givesWords(shift, reckoning.types)).toBe('kPa gauge')
  })
})
