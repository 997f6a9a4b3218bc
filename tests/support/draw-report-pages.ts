import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { ReportContent } from '@bayledger/report/content'
import { drawReport } from '@bayledger/report/drawing/draw-report'
import { demoReport } from '../../apps/api/src/commands/demo-report.ts'
import { shownReports } from '../../packages/report/test-support/shown-reports.ts'

/** `npm run screenshots:reports`: takes the pictures of reports again; no server and no browser. */
const folder = 'docs/pictures'
mkdirSync(folder, { recursive: true })

const drafts = mkdtempSync(join(tmpdir(), 'bayledger-pages-'))

/** Draws page one, or the first page that holds `words`. */
const drawPage = async (report: ReportContent, name: string, words?: string): Promise<void> => {
  const file = join(drafts, `${name}.pdf`)
  writeFileSync(file, await drawReport(report))
  const pages = execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' }).split('\f')
  const page = String(words === undefined ? 1 : pages.findIndex((text) => text.includes(words)) + 1)
  const only = ['-f', page, '-l', page, '-singlefile']
  execFileSync('pdftoppm', ['-png', '-gray', '-r', '80', ...only, file, join(folder, name)])
}

try {
  const { declinedLowTire, wheelOnBolts } = shownReports()
  await drawPage(demoReport('T-2601'), 'report')
  await drawPage(demoReport('T-2614'), 'report-do-not-drive')
  await drawPage(declinedLowTire, 'report-declined-low-tire')
  await drawPage(wheelOnBolts, 'report-wheel-on-bolts', '5 of 5 bolts')
  console.log(`Wrote the pictures of four reports to ${folder}`)
} finally {
  rmSync(drafts, { recursive: true })
}
