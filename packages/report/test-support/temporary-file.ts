import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** Lends a file with these bytes to `use` and removes it afterwards. */
export const withFile = <T>(bytes: Uint8Array, use: (path: string) => T): T => {
  const folder = mkdtempSync(join(tmpdir(), 'bayledger-report-'))
  const path = join(folder, 'report.pdf')
  try {
    writeFileSync(path, bytes)
    return use(path)
  } finally {
    rmSync(folder, { recursive: true })
  }
}
