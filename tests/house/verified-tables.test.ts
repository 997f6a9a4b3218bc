import { serviceMay } from '@bayledger/db/roles/service-may'
import { expect, it } from 'vitest'
import { textOf } from './repository-files.ts'

/** The tables that the first column of the table in docs/operations.md names. */
const documented = (): string[] => {
  const [, part = ''] = textOf('docs/operations.md').split('### What is verified, table by table')
  const [own = ''] = part.split(/^## /m)
  return own
    .split('\n')
    .filter((line) => line.startsWith('| `'))
    .flatMap((line) => [...(line.split('|')[1] ?? '').matchAll(/`(\w+)`/g)].map(([, name = '']) => name))
}

it('The operations page says of every table that the service may use whether it is verified', () => {
  expect(documented().toSorted()).toEqual(Object.keys(serviceMay).toSorted())
})
