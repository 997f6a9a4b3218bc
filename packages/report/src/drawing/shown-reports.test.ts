import { beforeAll, describe, expect, it } from 'vitest'
import { runOutsideTool } from '../../../../tests/support/run-outside-tool.ts'
import { shownReports } from '../../test-support/shown-reports.ts'
import { withFile } from '../../test-support/temporary-file.ts'
import { drawReport } from './draw-report.ts'

let low: Uint8Array
let bolts: Uint8Array
beforeAll(async () => {
  const reports = shownReports()
  low = await drawReport(reports.declinedLowTire)
  bolts = await drawReport(reports.wheelOnBolts)
})

/** Text as pdftotext (poppler) reads it, in the order of the content. */
const textOf = (pdf: Uint8Array, ...options: string[]): string =>
  withFile(pdf, (path) => runOutsideTool('pdftotext', [...options, path, '-']).output).replace(/\s+/g, ' ')

describe('a report of a low tire that the customer declined', () => {
  it('has the tire with its figure and its nail on page one, and the answer with its price', () => {
    const page = textOf(low, '-raw', '-l', '1')
    expect(page).toContain('Left low: left rear 24.0 psi of 35 on the label; puncture found, left rear.')
    expect(page).toContain('No: Find the leak and look inside, left rear, $47.87')
    // What was set aside at the left rear wheel does not undo the sensor at the right rear.
    expect(page).toContain('Done about it: new sensor, right rear.')
  })

  it('says how often to gauge as its caution says, in the answer and in what comes next', () => {
    const page = textOf(low, '-raw', '-l', '1')
    expect(textOf(low, '-raw')).toContain('CT-16 v3: This tire keeps losing air.')
    expect(page).toContain('Can I drive it? Yes, but check the air before every trip.')
    expect(page).toContain('gauge before every trip')
    expect(page).not.toContain('once a month')
    expect(page).not.toContain('once a week')
  })

  it('cuts no sentence of page one', () => {
    expect(textOf(low, '-raw', '-l', '1')).not.toContain('…  (the whole')
    expect(textOf(low, '-raw', '-l', '1')).not.toContain('further on')
  })
})

describe('a report of a wheel that is held by bolts', () => {
  it('has the price on page one, however much was done', () => {
    expect(textOf(bolts, '-raw', '-l', '1')).toMatch(/What we did.*\$\d+\.\d\d.*Is it fixed\?/)
  })

  it('speaks of bolts and of no nut', () => {
    expect(textOf(bolts)).toContain('5 of 5 bolts')
    expect(textOf(bolts)).not.toMatch(/\bnuts?\b/)
  })

  it('keeps the rounds of the fitting before, and of the second person under whom a bolt moved', () => {
    const rows = textOf(bolts, '-raw')
    expect(rows).toMatch(/about half; the wheel came off again 50 lbf·ft/)
    expect(rows).toMatch(/full figure; the wheel came off again 100 lbf·ft/)
    expect(rows).toMatch(/second person; overtaken 100 lbf·ft 5 of 5 bolts bolt 3 W-07/)
  })
})
