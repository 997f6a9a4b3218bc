import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { runOutsideTool } from '../support/run-outside-tool.ts'
import { published } from './published.ts'

/**
 * Source: the programs pdfsig and pdftotext (poppler) and qpdf, as this machine has them. They share no code with what
 * draws and seals the report; what they say of a freshly made one is read here.
 */
const root = join(import.meta.dirname, '..', '..')
const folder = mkdtempSync(join(tmpdir(), 'bayledger-sample-'))
const file = join(folder, 'sample.pdf')

const reportSample = () =>
  spawnSync(process.execPath, ['apps/api/src/commands/sample-report.ts', file], {
    cwd: root,
    encoding: 'utf8',
    env: { PATH: process.env.PATH ?? '' },
  })

beforeAll(() => {
  const run = reportSample()
  if (run.status !== 0) throw new Error(run.stderr)
})
afterAll(() => rmSync(folder, { recursive: true }))

/** What the demo's technician typed for T-2601, read from the ledger's entries and not from the report's code. */
const typed = () => {
  const order = demoShop('2026-01-12T11:40:00-05:00').orders.find(({ number }) => number === 'T-2601')
  if (!order) throw new Error('the demo has no order T-2601')
  return order.entries
}

published(
  {
    document: 'pdfsig, pdftotext and qpdf, as installed',
    section: 'what they say of the sealed sample report',
    certainty: 'read',
  },
  () => {
    it('the sample report is validly sealed over the whole document', () => {
      const said = runOutsideTool('pdfsig', [file]).output
      expect(said).toContain('Signature is Valid.')
      expect(said).toMatch(/^ +- Total document signed$/m)
      expect(runOutsideTool('qpdf', ['--check', file]).status).toBe(0)
    })

    it('the sample report shows every pressure that was typed in its own wheel’s row of page one', () => {
      const page = runOutsideTool('pdftotext', ['-layout', '-l', '1', file, '-']).output.split('\n')
      const rowOf = (wheel: string) =>
        page.find((line) => new RegExp(`^ *${wheel} [a-z ]+ .*psi.*psi`).test(line))
      const arrived = typed().flatMap((entry) =>
        entry.kind === 'wheel.checked' && entry.payload.phase === 'arrival' && entry.payload.gauge
          ? [[entry.payload.wheel, entry.payload.gauge.pressure.value] as const]
          : [],
      )
      expect(arrived.length).toBeGreaterThanOrEqual(4)
      for (const [wheel, psi] of arrived) expect(rowOf(wheel), wheel).toContain(`${psi.toFixed(1)} psi`)
      for (const entry of typed())
        if (entry.kind === 'pressure.set')
          expect(rowOf(entry.payload.wheel), entry.payload.wheel).toContain(
            `${entry.payload.asLeft.value.toFixed(1)} psi`,
          )
    })

    it('the sample report answers on page one whether to drive, and that the repair is proven', () => {
      const page = runOutsideTool('pdftotext', ['-l', '1', file, '-']).output.replace(/\s+/g, ' ')
      expect(page).toContain('Can I drive it? Yes, drive normally.')
      expect(page).toContain(
        'Proven: car recognizes all 4 sensors and the light was off at the end of 22 minutes of driving',
      )
    })
  },
)
