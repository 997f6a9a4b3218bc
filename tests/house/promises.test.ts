import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { root, textOf } from './repository-files.ts'

type Promised = { readonly promise: string; readonly test: string }

const promisesIn = (page: string): Promised[] =>
  [...page.matchAll(/^\| (?!Promise \||---)(.+?) \| (.+?) \|$/gm)].map(([, promise = '', test = '']) => ({
    promise,
    test,
  }))

const scripts = JSON.parse(textOf('package.json')).scripts as Readonly<Record<string, string>>

/** Why a promise has no test behind it; `null` where it has. */
const unfounded = ({ promise, test }: Promised): string | null => {
  const [, command] = test.match(/^`npm run ([\w:-]+)(?: .*)?`$/) ?? []
  if (command !== undefined) return command in scripts ? null : `${promise}: no command ${command}`
  const [, file = '', title = ''] = test.match(/^`([^`]+\.test\.tsx?)`: (.+)$/) ?? []
  if (!existsSync(join(root, file)) || file === '') return `${promise}: no test file in "${test}"`
  const titles = [
    ...textOf(file).matchAll(/\b(?:it|describe)(?:\.each\([\s\S]*?\))?\(\s*(['"`])([\s\S]*?)\1/g),
  ]
  return titles.some(([, , words = '']) => words.includes(title))
    ? null
    : `${promise}: ${file} has no test with "${title}" in its title`
}

describe('docs/promises.md', () => {
  const promises = promisesIn(textOf('docs/promises.md'))

  it('names for every promise a test that is there', () => {
    expect(promises.length).toBeGreaterThan(30)
    expect(promises.map(unfounded).filter((words) => words !== null)).toEqual([])
  })

  it('would be caught with a promise that nothing tests', () => {
    const planted = [
      '| We never sleep. | our word |',
      '| We never fail. | `tests/house/none.test.ts`: fails |',
      '| We are here. | `tests/house/promises.test.ts`: a title that nobody wrote, said elsewhere |',
      '| We run. | `npm run nothing-of-ours` |',
    ]
    expect(promisesIn(planted.join('\n')).map((one) => unfounded(one) === null)).toEqual(
      planted.map(() => false),
    )
  })
})
