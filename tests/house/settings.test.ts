import { describe, expect, it } from 'vitest'
import { textOf } from './repository-files.ts'

/** The environment variables that the service reads. */
const settings = [...textOf('apps/api/src/config.ts').matchAll(/^ {2}([A-Z][A-Z_]+): z/gm)].map(
  ([, name = '']) => name,
)

describe('docs/operations.md', () => {
  it('explains every setting', () => {
    expect(settings).toEqual(expect.arrayContaining(['DATABASE_URL', 'PORT', 'METRICS_PORT']))
    const page = textOf('docs/operations.md')
    expect(settings.filter((name) => !page.includes(`| \`${name}\` |`))).toEqual([])
  })
})
