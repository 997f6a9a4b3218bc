import { fold } from '@bayledger/ledger/fold'
import { describe, expect, it } from 'vitest'
import { wordsOf } from '../../ledger/test-support/seeded-ids.ts'
import { reportContext } from '../test-support/worked-context.ts'
import { workedOrder } from '../test-support/worked-order.ts'
import { workedState } from '../test-support/worked-state.ts'
import { composeReportContent } from './compose-content.ts'
import type { Block, Cell, ReportContent } from './content.ts'

const content = composeReportContent(workedState, reportContext)

type State = typeof workedState
const composed = (change: Partial<State>): ReportContent =>
  composeReportContent({ ...workedState, ...change }, reportContext)

const tableOf = (report: ReportContent, caption: string): Extract<Block, { kind: 'table' }> => {
  const found = report.sections
    .flatMap(({ blocks }) => blocks)
    .find((block) => block.kind === 'table' && block.caption === caption)
  if (found?.kind !== 'table') throw new Error(`no table "${caption}"`)
  return found
}

/** The cell of a table's row (by the words of its first cell) and column (by title). */
const cellOf = (report: ReportContent, caption: string, row: string, column: string): Cell | undefined => {
  const table = tableOf(report, caption)
  const index = table.columns.findIndex(({ title }) => title === column)
  return table.rows.find(({ cells }) => cells[0] && 'text' in cells[0] && cells[0].text === row)?.cells[index]
}

const wheel = (report: ReportContent, position: string) =>
  report.pageOne.wheels.find((line) => line.position === position)

const psi = (value: string) => ({ kind: 'figure', value, unit: 'psi' })
const gap = (text: string) => ({ kind: 'gap', text })

describe('page one', () => {
  it('answers from a proven repair that the car may be driven', () => {
    expect(content.pageOne.canDrive.words).toBe('Yes, drive normally.')
    expect(content.pageOne.fixed).toEqual({
      word: 'Proven',
      words: 'car recognizes all 4 sensors and the light was off at the end of 23 minutes of driving',
    })
  })

  it('keeps the customer’s own words', () => {
    expect(content.pageOne.told.text).toEqual({
      kind: 'words',
      text: 'It flashes for a minute, then the light stays on. Third time this week.',
    })
  })

  it('says when these words were erased', () => {
    const erased = composeReportContent(workedState, { ...reportContext, texts: {} })
    expect(erased.pageOne.told.text).toEqual({ kind: 'words', text: 'erased on request' })
  })

  it('prints the telephone that it asks the customer to call', () => {
    expect(content.pageOne.shop.lines).toEqual(['14 Tamber Street, Brindle Falls', 'Call (555) 555-0100'])
  })

  it('names the cause, and the one number that proves it where something was measured', () => {
    expect(content.pageOne.found[0]).toMatchObject({ severity: 'cause', proof: null })
    const { diagnosis } = workedState
    const low = workedOrder('low', { psi: { LR: 24 } }).state().diagnosis?.diagnosis.findings
    const found = low
      ?.filter(({ code }) => code === 'tire-low')
      .map((one) => ({ ...one, kind: 'cause' as const }))
    if (!diagnosis || found?.length !== 1) throw new Error('a tire at 24 psi is found low')
    const report = composed({
      diagnosis: {
        ...diagnosis,
        diagnosis: { ...diagnosis.diagnosis, primary: 'tire-low', findings: found },
      },
    })
    expect(report.pageOne.found[0]?.proof?.figure).toEqual(psi('24.0'))
  })

  it('says what was done in few lines, each with its figures, and the price', () => {
    expect(content.pageOne.did).toEqual([
      'Fitted a new sensor: right rear (new ID …2CF7).',
      'Took off the right rear wheel; torqued to 100 lbf·ft in 48 s, checked by a second person 1 min later.',
      'Set all four tires to 37.5 psi for today’s temperature.',
      'The car learns its sensors while it is driven; we drove 23 minutes (23 by the clock) and the warning light was off at the end.',
      'Price with tax: $203.40. Paid: $0.00.',
    ])
  })

  it('lists what was answered No or Not today', () => {
    expect(content.pageOne.notDone).toEqual([
      { title: 'New sensors in all wheels, $554.00', answer: 'Not today, until Mar 1, 2026' },
    ])
  })

  it('puts before, after, label and sensor in each wheel’s line', () => {
    expect(wheel(content, 'RR')).toEqual({
      position: 'RR',
      name: 'right rear',
      marked: { severity: 'cause', word: 'Cause' },
      before: psi('32.7'),
      after: psi('37.7'),
      label: psi('35'),
      sensorBefore: { kind: 'words', text: 'silent, 3 tries' },
      sensorAfter: { kind: 'words', text: 'answers, ID …2CF7' },
    })
  })

  it('computes the re-torque from the sheet’s distance and the odometer', () => {
    expect(content.pageOne.next[0]).toBe(
      'In 50 to 100 miles, at 88,206 to 88,256 mi: come back for a free check that the wheels are tight, no appointment.',
    )
  })
})

describe('an odometer', () => {
  const labels = (report: ReportContent) => report.pageOne.facts.map(({ label }) => label)

  it('that was unlikely and was read twice says so, as it came and at the end of our drive', () => {
    const opened = workedState.opened && { ...workedState.opened, odometerConfirmed: true }
    const drives = workedState.drives.map((drive) => ({ ...drive, odometerConfirmed: true }))
    const report = composed({ opened, drives })
    expect(labels(report)).toContain('Odometer when it came (unlikely, read twice)')
    expect(labels(report)).toContain('Odometer after our drive (unlikely, read twice)')
    expect(JSON.stringify(report.sections)).toContain('It was read a second time.')
    expect(labels(content)).toContain('Odometer when it came')
  })
})

describe('a fact that is absent', () => {
  it('is "not checked" where nobody looked', () => {
    expect(wheel(content, 'SP')?.after).toEqual(gap('not checked'))
    const entries = workedOrder('begun').entries()
    const first = entries.findIndex(({ kind }) => kind === 'tire.inspected')
    const begun = composeReportContent(fold(entries.slice(0, first + 1)), reportContext)
    expect(cellOf(begun, 'Tires, stems and wheels, present on arrival', 'RF', 'Tread')).toEqual(
      gap('not checked'),
    )
  })

  it('is "could not be checked" where that was recorded, with the reason below the table', () => {
    expect(wheel(content, 'SP')?.before).toEqual(gap('could not be checked'))
    const paragraphs = content.sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : [])),
    )
    expect(paragraphs).toContain('Could not be checked: spare gauge pressure (cargo in the way).')
  })

  it('never turns into a good or a figure when a whole check is missing', () => {
    const untouched = { wheels: {}, tires: {}, module: null, telltale: null }
    const report = composed({ arrival: untouched, closing: untouched, work: {} })
    const cells = [
      ...report.pageOne.wheels.flatMap(({ before, after, sensorBefore, sensorAfter }) => [
        before,
        after,
        sensorBefore,
        sensorAfter,
      ]),
      ...tableOf(report, 'Pressures and sensors').rows.flatMap(({ cells }) => cells.slice(1)),
    ]
    expect(cells.filter(({ kind }) => kind === 'good' || kind === 'figure')).toEqual([])
    expect(
      cells
        .filter(({ kind }) => kind === 'words')
        .every((cell) => 'text' in cell && cell.text === 'none expected'),
    ).toBe(true)
  })

  it('makes a label’s figure doubtful while nobody has verified it', () => {
    const sheet = workedState.sheet
    if (!sheet) throw new Error('the worked state has a sheet')
    const doubtful = composed({
      sheet: {
        ...sheet,
        sheet: {
          ...sheet.sheet,
          sources: {
            ...sheet.sheet.sources,
            placard: sheet.sheet.sources.placard && { ...sheet.sheet.sources.placard, verifiedBy: null },
          },
        },
      },
    })
    expect(wheel(doubtful, 'LF')?.label).toEqual(gap('35 psi, not verified'))
  })

  it('leaves no cell and no line empty, whatever is missing', () => {
    for (const key of Object.keys(workedState) as (keyof State)[]) {
      const value = workedState[key]
      const emptied = Array.isArray(value)
        ? []
        : value !== null && typeof value === 'object'
          ? null
          : undefined
      if (emptied === undefined || ['arrival', 'closing', 'authority', 'work', 'answers'].includes(key))
        continue
      if (['stopsTold', 'refusals', 'closed', 'setAside', 'figures'].includes(key)) continue
      const report = composed({ [key]: emptied })
      const cells = report.sections.flatMap(({ blocks }) =>
        blocks.flatMap((block) => (block.kind === 'table' ? block.rows.flatMap(({ cells }) => cells) : [])),
      )
      for (const cell of cells) {
        expect(cell.kind === 'figure' ? cell.value : cell.text, `${key} missing`).not.toBe('')
        if (cell.kind === 'figure') expect(cell.value, `${key} missing`).not.toMatch(/NaN|undefined|Infinity/)
      }
      expect(JSON.stringify(report)).not.toMatch(/undefined|NaN|\[object/)
    }
  })
})

describe('the torque', () => {
  const rowsOf = (report: ReportContent) =>
    tableOf(report, 'Rounds').rows.map(({ cells }) =>
      cells.map((cell) => ('text' in cell ? cell.text : 'value' in cell ? cell.value : '')).slice(0, 5),
    )

  it('of a wheel that stayed on is shown as it was looked at again, a nut that moved too', () => {
    const { RR } = workedState.work
    const seal = RR?.rounds.again
    if (!RR || !seal) throw new Error('the worked state has a sealed round')
    const stayed = { ...RR, removed: null, mounted: null, fitted: null, inside: null, checked: null }
    const again = {
      ...stayed,
      rounds: { again: seal },
      overtaken: [{ ...seal, round: 'again' as const, moved: [3] }],
    }
    expect(rowsOf(composed({ work: { RR: again } }))).toEqual([
      ['RR', 'after the miles', '100', '5 of 5 nuts', 'nut 3'],
      ['RR', 'after the miles', '100', '5 of 5 nuts', 'none'],
    ])
  })

  it('of a wheel that came off names each round, done or not', () => {
    expect(rowsOf(content).map(([, round]) => round)).toEqual([
      'about half',
      'full figure',
      'check round',
      'second person',
    ])
  })

  it('that nobody else could check says so, on the first page too', () => {
    const { RR } = workedState.work
    const by = RR?.rounds.again?.written.by
    if (!RR?.checked || !by) throw new Error('the worked state has a checked wheel')
    const alone = { ...RR, checked: { ...RR.checked, written: { ...RR.checked.written, by } } }
    const report = composed({ work: { RR: alone } })
    expect(rowsOf(report).at(-1)?.[1]).toBe('own check')
    expect(JSON.stringify(report.sections)).toContain(
      'No second person was available: whoever torqued the right rear wheel checked it again.',
    )
    expect(report.pageOne.did).toContain(
      'Took off the right rear wheel; torqued to 100 lbf·ft in 48 s, checked again 1 min later; no second person was available.',
    )
  })
})

describe('"Can I drive it?" is careful', () => {
  it('while a wheel is torqued and unchecked', () => {
    const work = workedState.work.RR
    if (!work) throw new Error('the worked state has work on RR')
    const report = composed({ work: { ...workedState.work, RR: { ...work, checked: null } } })
    expect(report.pageOne.canDrive.words).toBe('No. Please do not drive it. Call us.')
  })

  it('while a stop is open, even one whose refusal is on record', () => {
    const { diagnosis } = workedState
    if (!diagnosis?.diagnosis.findings[0]) throw new Error('the worked state has findings')
    const bulge = {
      ...diagnosis.diagnosis.findings[0],
      code: 'tire-unsafe' as const,
      kind: 'stop' as const,
      stop: 'do-not-drive' as const,
      holds: ['road' as const],
    }
    const report = composed({
      diagnosis: { ...diagnosis, diagnosis: { ...diagnosis.diagnosis, findings: [bulge] } },
      refusals: {
        'tire-unsafe': {
          codes: ['tire-unsafe'],
          cautionShown: { number: 'CT-04', version: 1 },
          proof: { kind: 'signed', digest: 'f'.repeat(64) },
          leaves: 'as-it-is',
          wheels: bulge.wheels,
          written: diagnosis.written,
        },
      },
    })
    expect(report.pageOne.canDrive.answer).toBe('do-not-drive')
    expect(report.pageOne.found[0]?.severity).toBe('do-not-drive')
  })

  it('when the drive was too short, the light came back, or a tire is under its label', () => {
    const [drive] = workedState.drives
    const rear = workedState.work.LR
    if (!drive || !rear?.pressure) throw new Error('the worked state has a drive and a pressure')
    const short = composed({ drives: [{ ...drive, minutes: 13 }] })
    expect(short.pageOne.canDrive.words).toBe('Yes, but check the air each week.')
    expect(short.pageOne.fixed.word).toBe('Not sure yet')
    expect(short.pageOne.next.join()).toContain(
      'once a week, first by Jan 19, 2026, because we are not sure of the repair yet',
    )
    const lit = composed({ drives: [{ ...drive, lightAtEnd: 'solid' }] })
    expect(lit.pageOne.canDrive.words).toBe('Yes, but check the air each week.')
    expect(lit.pageOne.fixed.word).toBe('Not fixed')
    const low = composed({
      closing: { ...workedState.closing, wheels: {} },
      work: {
        ...workedState.work,
        LR: { ...rear, pressure: { ...rear.pressure, asLeft: { value: 33, unit: 'psi' } } },
      },
    })
    expect(low.pageOne.canDrive.words).toBe('Yes, but check the air each week.')
  })

  it('when no findings were issued', () => {
    const report = composed({ diagnosis: null })
    expect(report.pageOne.canDrive.answer).toBe('do-not-drive')
    expect(report.pageOne.next[0]).toContain('Before it is moved, call us, (555) 555-0100')
  })
})

describe('the customer’s copy', () => {
  it('shows no more than the last four of any sensor’s ID', () => {
    const text = JSON.stringify(content)
    const { arrival, closing } = workedState
    const ids = [arrival, closing].flatMap(({ module }) => Object.values(module?.ids ?? {}))
    expect(ids).toHaveLength(8)
    for (const id of ids) expect(text).not.toContain(id)
  })

  it('shows the times of the shop’s clock', () => {
    expect(content.composedAtWords).toBe('Jan 12, 2026, 12:52 PM EST')
    expect(cellOf(content, 'Rounds', 'RR', 'Who and when')).toEqual({
      kind: 'words',
      text: 'Rufus Kettleby, Jan 12, 2026, 10:13 AM',
    })
  })

  it('shows what was withdrawn, with the reason', () => {
    expect(
      tableOf(content, 'Entries withdrawn before this report; they stay in the ledger').rows[0]?.cells,
    ).toEqual([
      { kind: 'words', text: '7, wheel checked' },
      { kind: 'words', text: 'wrong wheel' },
      { kind: 'words', text: 'Rufus Kettleby, Jan 12, 2026, 10:02 AM' },
    ])
  })

  it('says of a photo whose bytes have not come that it was not received', () => {
    expect(cellOf(content, 'Photos of this order', 'Right rear, stem', 'File')).toEqual(gap('not received'))
    const received = composeReportContent(workedState, {
      ...reportContext,
      photosReceived: new Set([wordsOf('photo')]),
    })
    expect(cellOf(received, 'Photos of this order', 'Right rear, stem', 'File')).toEqual({
      kind: 'words',
      text: 'received',
    })
  })
})

it('composing is pure: the same state and context give the same content', () => {
  expect(composeReportContent(structuredClone(workedState), reportContext)).toEqual(content)
})
