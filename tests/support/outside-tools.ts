import { spawnSync } from 'node:child_process'
import { accessSync, constants, existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

/** Programs from outside the project that tests measure it with, and the Debian package that brings each. */
const tools = {
  chromium: 'chromium',
  pdfsig: 'poppler-utils',
  pdftotext: 'poppler-utils',
  pdftoppm: 'poppler-utils',
  pdfinfo: 'poppler-utils',
  pdffonts: 'poppler-utils',
  pdfimages: 'poppler-utils',
  qpdf: 'qpdf',
  openssl: 'openssl',
} as const
export type OutsideTool = keyof typeof tools

const pathOf = (tool: OutsideTool): string | null =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, tool))
    .find((file) => {
      try {
        accessSync(file, constants.X_OK)
        return true
      } catch {
        return false
      }
    }) ?? null

/** The whole path of a tool; throws with the exact command where it is missing. */
export const outsideTool = (tool: OutsideTool): string => {
  const path = pathOf(tool)
  if (path === null) throw new Error(`${tool} is missing. Install it: ${installCommand([tools[tool]])}`)
  return path
}

const installCommand = (packages: readonly string[]): string =>
  `apt-get update && apt-get install -y ${packages.join(' ')}`

/**
 * Finds every tool or, on Debian as root, installs what is missing. Elsewhere it throws with the exact command:
 * nothing is skipped for want of a tool.
 */
export const ensureOutsideTools = (progress: (line: string) => void): void => {
  const missing = () => (Object.keys(tools) as OutsideTool[]).filter((tool) => pathOf(tool) === null)
  const packages = [...new Set(missing().map((tool) => tools[tool]))]
  if (packages.length === 0) return
  const isDebianRoot = existsSync('/etc/debian_version') && process.getuid?.() === 0
  if (!isDebianRoot)
    throw new Error(`Missing: ${missing().join(', ')}. Run as root: ${installCommand(packages)}`)
  progress(`Installing ${packages.join(', ')} from Debian's packages`)
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  for (const argv of [['update'], ['install', '-y', '--no-install-recommends', ...packages]]) {
    const run = spawnSync('apt-get', argv, { env: environment, encoding: 'utf8' })
    if (run.status !== 0) throw new Error(`apt-get ${argv.join(' ')} failed:\n${run.stderr}`)
  }
  if (missing().length > 0) throw new Error(`Still missing after installing: ${missing().join(', ')}`)
}
