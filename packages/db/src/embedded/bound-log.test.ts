import { closeSync, mkdtempSync, openSync, readFileSync, rmSync, writeSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { boundLog } from './bound-log.ts'

const folder = mkdtempSync(join(tmpdir(), 'bayledger-log-'))
afterAll(() => rmSync(folder, { recursive: true }))

describe("PostgreSQL's log", () => {
  it('is kept below its bound while it is being written, with what was written last', () => {
    const log = join(folder, 'postgres.log')
    boundLog(log, 100)
    const open = openSync(log, 'a')
    const write = (line: string) => {
      writeSync(open, `${line}\n`)
      boundLog(log, 100)
    }
    for (let number = 1; number <= 60; number += 1) write(`line ${String(number).padStart(3, '0')}`)
    closeSync(open)
    const now = readFileSync(log, 'utf8')
    const before = readFileSync(`${log}.before`, 'utf8')
    expect(now.length).toBeLessThanOrEqual(100)
    expect(before.length).toBeLessThanOrEqual(110)
    expect(before + now).toMatch(/^line 0(\d\d)\n(?:line \d+\n)*line 060\n$/)
    // Emptied, not left with a hole as long as what was there.
    expect(now).not.toContain('\0')
  })
})
