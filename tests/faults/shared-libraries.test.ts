import { spawnSync } from 'node:child_process'
import { cpSync, lstatSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { binariesIn, findBinaries } from '@bayledger/db/embedded/binaries'
import { linkSharedLibraries } from '@bayledger/db/embedded/shared-libraries'
import { afterAll, beforeAll, expect, it } from 'vitest'

let copy: string

beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), 'bayledger-libraries-'))
  const installed = join(dirname(findBinaries().postgres), '../..')
  cpSync(installed, copy, { recursive: true, filter: (path) => !lstatSync(path).isSymbolicLink() })
})

afterAll(() => rmSync(copy, { recursive: true, force: true }))

it('links the libraries of a package that npm installed without its scripts', () => {
  const { initdb } = binariesIn(join(copy, 'native'))
  const before = spawnSync(initdb, ['--version'], { encoding: 'utf8' })
  expect(before.stderr).toMatch(/cannot open shared object file|Library not loaded/)
  linkSharedLibraries(copy)
  linkSharedLibraries(copy)
  expect(spawnSync(initdb, ['--version'], { encoding: 'utf8' }).stdout).toMatch(/PostgreSQL\) 18/)
})
