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

const drawPage = async (report: ReportContent, name: string, page: number): Promise<void> => {
  const file = join(drafts, `${name}.pdf`)
  writeFileSync(file, await drawReport(report))
  const only = ['-f', String(page), '-l', String(page), '-singlefile']
  execFileSync('pdftoppm', ['-png', '-gray', '-r', '80', ...only, file, join(folder, name)])
}

/** The page that has the torque table: where it falls depends on what is before it. */
const torquePage = 3

try {
  const { declinedLowTire, wheelOnBolts } = shownReports()
  await drawPage(demoReport('T-2601'), 'report', 1)
  await drawPage(demoReport('T-2614'), 'report-do-not-drive', 1)
  await drawPage(declinedLowTire, 'report-declined-low-tire', 1)
  await drawPage(wheelOnBolts, 'report-wheel-on-bolts', torquePage)
  console.log(`Wrote the pictures of four reports to ${folder}`)
} finally {
  rmSync(drafts, { recursive: true })
}
