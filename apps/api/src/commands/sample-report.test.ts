import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'

const folder = mkdtempSync(join(tmpdir(), 'bayledger-sample-'))
afterAll(() => rmSync(folder, { recursive: true }))

const reportSample = (...args: string[]) =>
  spawnSync(process.execPath, [join(import.meta.dirname, 'sample-report.ts'), ...args], {
    encoding: 'utf8',
    env: { PATH: process.env.PATH, NODE_COMPILE_CACHE: process.env.NODE_COMPILE_CACHE },
  })

describe('the command for a sample report', () => {
  it('without a file name says what it wants and writes nothing', () => {
    const run = reportSample()
    expect(run.status).toBe(2)
    expect(run.stderr).toContain('npm run -s report:sample -- out.pdf')
  })

  it('names a file that cannot be written', () => {
    const missing = join(folder, 'no-such-folder', 'sample.pdf')
    const run = reportSample(missing)
    expect(run.status).toBe(1)
    expect(run.stderr).toContain(missing)
    expect(existsSync(missing)).toBe(false)
  })
})
