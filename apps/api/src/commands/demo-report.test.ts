import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { drawReport } from '@bayledger/report/drawing/draw-report'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { textsOf } from '../../../../packages/report/test-support/texts-of.ts'
import { runOutsideTool } from '../../../../tests/support/run-outside-tool.ts'
import { demoReport } from './demo-report.ts'

/** What pdftotext (poppler) reads of the demo's finished reports. */
const folder = mkdtempSync(join(tmpdir(), 'bayledger-demo-report-'))
afterAll(() => rmSync(folder, { recursive: true }))

const fileOf = (number: string): string => join(folder, `${number}.pdf`)
beforeAll(async () => {
  for (const number of ['T-2601', 'T-2605', 'T-2614'])
    writeFileSync(fileOf(number), await drawReport(demoReport(number)))
})

const textOf = (number: string, ...options: string[]): string =>
  runOutsideTool('pdftotext', [...options, fileOf(number), '-']).output.replace(/\s+/g, ' ')

const pageOneOf = (number: string): string => textOf(number, '-raw', '-l', '1')

describe('page one of a vehicle that must not be driven', () => {
  it('says so, with the danger, what removes it, and that the light is another thing', () => {
    const page = pageOneOf('T-2614')
    expect(page).toContain('Can I drive it? No. Please do not drive it. Call us.')
    expect(page).toContain('Do not drive: The left front tire has a bulge.')
    expect(page).toMatch(/What fixes it: new tire, left front/)
    expect(page).toContain(
      'The warning light: It was off when we looked, so there is no cause of a light to name.',
    )
  })

  it('says that it is not fixed, and never that nothing was found to repair', () => {
    const page = pageOneOf('T-2614')
    expect(page).toContain('Is it fixed? Not fixed: what makes it unsafe was not repaired')
    expect(page).not.toContain('nothing was found')
  })

  it('names the refusal with its witness', () => {
    expect(pageOneOf('T-2614')).toContain(
      'Refused although unsafe: Tire unsafe, left front. Refused to sign; witness: Devin Marrow.',
    )
  })

  it('says whom to call or ask for, and how it gets away', () => {
    const page = pageOneOf('T-2614')
    expect(page).toContain(
      'Before it is moved, call us, (555) 555-0100, or ask for Ottoline Pask at the counter.',
    )
    expect(page).toContain('Have it towed, or have us fit the spare in its place: full size, 63.8 psi')
  })

  it('advises nothing about driving it', () => {
    const page = pageOneOf('T-2614')
    for (const advice of ['once a month', 'once a week', 'Drive 20 minutes', 'If the light comes back'])
      expect(page).not.toContain(advice)
  })

  it('marks the wheel on the drawing by a bar with the word of the damage', () => {
    expect(pageOneOf('T-2614')).toMatch(/LF Bulge/)
    expect(demoReport('T-2614').pageOne.wheels[0]?.marked).toEqual({
      severity: 'do-not-drive',
      word: 'Bulge',
    })
  })

  it('says a damage once among the reasons', () => {
    expect(textOf('T-2614')).toContain('Left front damage to the tire: a bulge')
    expect(textOf('T-2614')).not.toContain('bulge: a bulge')
  })
})

describe('page one of tires that were low from cold', () => {
  it('shows the lowest figure and names the low spare too', () => {
    const page = pageOneOf('T-2601')
    expect(page).toMatch(/24\.3 psi Right front gauge pressure, the lowest of 4/)
    expect(page).toContain('Also low when it came: spare 52.8 psi of 60.')
  })

  it('joins the cause and what was done about it', () => {
    expect(pageOneOf('T-2601')).toContain('Done about it: set all pressures for the day.')
    expect(pageOneOf('T-2605')).toContain('Done about it: set the pressures and reset the system.')
  })

  it('claims of the light only what was seen at the end of the drive', () => {
    expect(pageOneOf('T-2601')).toContain('the light was off at the end of 22 minutes of driving')
    expect(textOf('T-2601')).not.toContain('stayed off')
  })

  it('explains why the tires were set over the label, what to expect cold and after a drive, and when a tire is cold', () => {
    // By hand: 35.9 psi at 48 °F and 820 ft (14.27 psi of air): (35.9 + 14.27) · 478.67 / 507.67 − 14.27 = 33.0 at 19 °F;
    // 32.2 at 11 °F; 41.0 at 100 °F (559.67 degrees Rankine).
    expect(pageOneOf('T-2601')).toContain(
      'The label says 33 and we set 35.9, because the tires were warm: cold, expect 33.0 psi at 19 °F, 32.2 at 11 °F tonight; after a drive (air at 100 °F) up to 41.0.',
    )
    expect(pageOneOf('T-2601')).toContain('cold tires (parked 3 hours, or driven under a mile)')
  })

  it('says what to do when the light comes back, and by which day the tires are gauged', () => {
    expect(pageOneOf('T-2601')).toContain(
      'If the light comes back, check the air in all cold tires with a gauge and call us, (555) 555-0100.',
    )
    expect(pageOneOf('T-2601')).toContain('once a month, first by Feb 11, 2026')
    expect(pageOneOf('T-2605')).toContain(
      'once a week, first by Jan 19, 2026, because we are not sure of the repair yet',
    )
  })

  it('says of a spare that it was set to its limit only, alike on every page', () => {
    expect(pageOneOf('T-2601')).toContain('spare to 60.0 psi, as far as its limit allows')
    expect(pageOneOf('T-2601')).toContain('Spare: set to the limit, 60.0 psi, which is 55.8 cold.')
    expect(textOf('T-2601')).not.toMatch(/48 °F measured 64/)
    expect(textOf('T-2601', '-f', '4', '-l', '4', '-layout')).toMatch(/SP 60\.0 psi/)
  })

  it('says when each odometer reading was taken', () => {
    expect(pageOneOf('T-2601')).toContain('Odometer when it came')
    expect(pageOneOf('T-2601')).toContain('Odometer after our drive')
    expect(pageOneOf('T-2605')).toMatch(/Odometer when it left .*not read again/)
  })

  it('has the price, what was paid, what a signature means and what the code opens', () => {
    expect(pageOneOf('T-2605')).toContain('Price with tax: $27.30. Paid: $27.30.')
    const page = pageOneOf('T-2601')
    expect(page).toContain('Signing says that you were given this report, and nothing else.')
    expect(page).toContain('A paper copy cannot be checked')
  })
})

describe('the later pages', () => {
  it('give the time, the day, the gauge and the person of every arrival reading', () => {
    const text = textOf('T-2601', '-layout', '-f', '2', '-l', '2')
    for (const wheel of ['LF', 'RF', 'RR', 'LR', 'SP'])
      expect(text).toMatch(new RegExp(`${wheel} GA-1 Rufus Kettleby, Jan 12, 2026, 7:1\\d AM`))
  })

  it('give the source of the label and the target before it was rounded', () => {
    const text = textOf('T-2601', '-layout')
    expect(text).toContain('Source of the label’s figures: placard photo, Door label of a Linnet 2019')
    expect(text).toMatch(/35\.864 psi 35\.9 psi 35\.9 psi 33\.0 psi/)
  })

  it('name no wheel as nearest to the light where all are alike', () => {
    expect(textOf('T-2601')).toContain('All 4 road tires are alike')
  })

  it('give each line of the price, and each payment with its day', () => {
    expect(textOf('T-2605')).toMatch(/card \$27\.30 Ottoline Pask, Jan 12, 2026, 10:44 AM/)
  })

  it('print a caution with its number, its version and its words', () => {
    expect(textOf('T-2614', '-raw')).toContain('CT-04 v1: This tire can fail suddenly.')
  })
})

describe('page one of a visit to have the torque checked, with no light before or now', () => {
  const said = (language: 'en' | 'es') =>
    textsOf(demoReport('T-2615', language))
      .map(([, text]) => text)
      .join('\n')

  it('says that it was done, and looks for no cause of a light', () => {
    expect(said('en')).toContain('Done: Check again that each wheel is tight, all four.')
    expect(said('en')).not.toMatch(/No work was done|have not found the cause|once a week/)
    expect(said('es')).toContain('Hecho: Revisar otra vez que cada rueda esté apretada: las cuatro.')
  })
})
