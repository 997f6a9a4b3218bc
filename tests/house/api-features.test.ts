import { globSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const root = 'apps/api/src/features'
/**
 * What a feature may be made of. `service` and `store` may also be folders of verb-noun files, and `store/projections`
 * holds one file for each projection, named for it.
 */
const roles = ['routes', 'service', 'store', 'policy', 'present'] as const

const strays = (files: readonly string[]): string[] =>
  files.filter((file) => {
    const [, role = '', ...rest] = file.split('/')
    const isRole = roles.some((name) => role === `${name}.ts` || role === `${name}.test.ts`)
    const isUseCase =
      (role === 'service' || role === 'store') &&
      rest.length === 1 &&
      /^[a-z]+(-[a-z]+)+(\.test)?\.ts$/.test(rest[0] ?? '')
    const isProjection = /^store\/projections\/[a-z-]+(\.test)?\.ts$/.test([role, ...rest].join('/'))
    return !(rest.length === 0 ? isRole : isUseCase || isProjection)
  })

const files = globSync('**/*.ts', { cwd: root }).map((file) => file.replaceAll('\\', '/'))

describe('a feature of the service', () => {
  it('is a closed set of files: routes, service, store, policy, present', () => {
    expect(strays(files)).toEqual([])
    expect(files.length).toBeGreaterThan(50)
  })

  it('has routes', () => {
    for (const feature of new Set(files.map((file) => file.split('/')[0])))
      expect(files).toContain(`${feature}/routes.ts`)
  })

  it('would be caught with a file of another name', () => {
    expect(
      strays([
        'orders/helpers.ts',
        'orders/service/append.ts',
        'orders/rules/check-all.ts',
        'orders/service/projections/head.ts',
        'orders/store/projections/head.ts',
        'orders/routes.ts',
      ]),
    ).toEqual([
      'orders/helpers.ts',
      'orders/service/append.ts',
      'orders/rules/check-all.ts',
      'orders/service/projections/head.ts',
    ])
  })
})
