import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { runOutsideTool } from '../../../../tests/support/run-outside-tool.ts'
import { finishedOrder } from '../../test-support/finished-order.ts'
import { withFile } from '../../test-support/temporary-file.ts'
import type { ReportContent } from '../content.ts'
import { printable } from '../fonts/printable.ts'
import { drawReport } from './draw-report.ts'

let bytes: Uint8Array
beforeAll(async () => {
  bytes = await drawReport(finishedOrder)
})

/** Text as pdftotext (poppler) reads it back, rows kept. */
const textOf = (pdf: Uint8Array, ...options: string[]): string =>
  withFile(pdf, (path) => runOutsideTool('pdftotext', [...options, '-enc', 'UTF-8', path, '-']).output)

const saidAbout = (tool: 'pdfinfo' | 'pdffonts', pdf: Uint8Array, ...options: string[]): string =>
  withFile(pdf, (path) => runOutsideTool(tool, [...options, path]).output)

describe('a drawn report', () => {
  it('is well formed for qpdf', () => {
    const checked = withFile(bytes, (path) => runOutsideTool('qpdf', ['--check', path]))
    expect(checked.output).toContain('No syntax or stream encoding errors found')
    expect(checked.status).toBe(0)
  })

  it('is tagged, titled and on letter paper for pdfinfo', () => {
    const info = saidAbout('pdfinfo', bytes)
    expect(info).toMatch(/^Tagged: +yes$/m)
    expect(info).toMatch(/^Title: +Tire-pressure report R-2601-1, order T-2601$/m)
    expect(info).toMatch(/^Page size: +612 x 792 pts \(letter\)$/m)
    expect(info).toMatch(/^JavaScript: +no$/m)
  })

  it('keeps every character of the shop’s name as its author, in the metadata too', () => {
    expect(saidAbout('pdfinfo', bytes)).toMatch(/^Author: +Tamber Street Tire & Wheel$/m)
    const metadata = saidAbout('pdfinfo', bytes, '-meta')
    expect(metadata).toContain('<rdf:li>Tamber Street Tire &#38; Wheel</rdf:li>')
  })

  it('claims no standard that nobody has verified', () => {
    expect(saidAbout('pdfinfo', bytes, '-meta')).not.toMatch(/pdfuaid|pdfaid/)
    expect(saidAbout('pdfinfo', bytes)).not.toMatch(/^PDF subtype/m)
  })

  it('has a bookmark for page one and for each section', () => {
    const titles = [...unpacked(bytes).matchAll(/\/Title \((.*)\)/g)].map(([, title]) => title)
    expect(titles).toContain('Page one: can I drive it?')
    for (const { title } of finishedOrder.sections) expect(titles).toContain(title)
  })

  it('keeps a figure’s unit apart from the words after it when it is read back', () => {
    for (const options of [[], ['-raw'], ['-layout']]) {
      const text = textOf(bytes, ...options)
      expect(text).not.toMatch(/psi[A-Za-z]/)
    }
    expect(textOf(bytes, '-raw')).toMatch(/24\.3 psi right front tire/i)
  })

  it('has a structure tree of headings, tables with row and column headings, lists and described figures', () => {
    const tree = saidAbout('pdfinfo', bytes, '-struct')
    for (const role of [
      'Document',
      'H1',
      'H2',
      'H3',
      'P',
      'L',
      'LI',
      'LBody',
      'Table',
      'TR',
      'TH',
      'TD',
      'Figure',
    ])
      expect(tree, role).toMatch(new RegExp(`^ *${role}\\b`, 'm'))
    const text = saidAbout('pdfinfo', bytes, '-struct-text')
    expect(text.indexOf('Can I drive it?')).toBeLessThan(text.indexOf('What you told us'))
    expect(text.indexOf('What we found')).toBeLessThan(text.indexOf('Is it fixed?'))
    expect(text.indexOf('Is it fixed?')).toBeLessThan(text.indexOf('Do this next'))
  })

  it('embeds every font with its characters', () => {
    const rows = saidAbout('pdffonts', bytes).trim().split('\n').slice(2)
    expect(rows.length).toBeGreaterThan(2)
    for (const row of rows) {
      expect(row).toContain('AtkinsonHyperlegible')
      expect(row, row).toMatch(/ yes yes yes +\d+ +\d+$/)
    }
  })

  it('shows every figure in its wheel’s row', () => {
    const lines = textOf(bytes, '-layout').split('\n')
    for (const wheel of finishedOrder.pageOne.wheels) {
      const row = lines.find(
        (line) => line.trimStart().startsWith(`${wheel.position} ${wheel.name}`) && line.includes('psi'),
      )
      for (const cell of [wheel.before, wheel.after, wheel.label])
        expect(row, wheel.position).toContain(
          cell.kind === 'figure' ? `${cell.value} ${cell.unit}` : cell.text,
        )
    }
  })

  it('says on each page which report, which page of how many, and which ledger entry', () => {
    for (const page of [1, 2]) {
      const text = textOf(bytes, '-f', String(page), '-l', String(page))
      expect(text).toContain(`Report R-2601-1 · order T-2601 · page ${page} of 2`)
      expect(text).toContain('Ledger entry 41, 3f2a 91bc 04de 77aa')
      expect(text).toContain('times in America/Chicago')
    }
  })

  it('keeps page one to itself', () => {
    expect(textOf(bytes, '-f', '1', '-l', '1')).not.toContain('The vehicle as it came')
    expect(textOf(bytes, '-f', '2', '-l', '2')).toContain('The vehicle as it came')
  })

  it.each([
    ['in words', 'Wilhelmina Aurelia Featherstonehaugh-Cholmondeley of the Upper Brindle Falls Mills'],
    ['in one word', 'W'.repeat(80)],
  ])('has a name of 80 letters, %s, whole on page one and on the paper', async (_, name) => {
    const { pageOne } = finishedOrder
    const [own, ...others] = pageOne.signatures
    const pdf = await drawReport({
      ...finishedOrder,
      pageOne: { ...pageOne, signatures: own ? [{ ...own, name }, ...others] : [] },
    })
    expect(name.length).toBeGreaterThanOrEqual(80)
    const firstPage = ['-f', '1', '-l', '1']
    expect(squeezed(textOf(pdf, '-raw', ...firstPage))).toContain(squeezed(name))
    const ends = [...textOf(pdf, '-bbox', ...firstPage).matchAll(/ xMax="([\d.]+)"/g)].map(([, at]) =>
      Number(at),
    )
    expect(Math.max(...ends)).toBeLessThan(612 - 18)
  })

  it('gives the same bytes for the same content, and others for another', async () => {
    const again = await drawReport(structuredClone(finishedOrder))
    expect(Buffer.from(again).equals(Buffer.from(bytes))).toBe(true)
    const other = await drawReport({ ...finishedOrder, reportNumber: 'R-2601-2' })
    expect(Buffer.from(other).equals(Buffer.from(bytes))).toBe(false)
  })

  it('puts the word beside every shape', () => {
    const text = textOf(bytes)
    for (const word of [
      'Do not drive.',
      'Cause.',
      'Also found.',
      'For information.',
      'Not checked.',
      'Good as measured.',
    ])
      expect(text).toContain(word)
  })

  it('answers "No" on a solid bar', async () => {
    const stopped = await drawReport({
      ...finishedOrder,
      pageOne: {
        ...finishedOrder.pageOne,
        canDrive: { answer: 'do-not-drive', words: 'No. Please do not drive it. Call us.' },
      },
    })
    expect(textOf(stopped, '-l', '1')).toContain('No. Please do not drive it. Call us.')
  })
})

/** A report whose only free text is the complaint, printed whole on the second page. */
const reportTelling = (texts: readonly string[]): ReportContent => ({
  ...finishedOrder,
  sections: [
    {
      title: 'Told',
      blocks: texts.map((text, index) => ({
        kind: 'paragraph',
        text: `#${index}: ${text} :end`,
        entry: index,
      })),
    },
  ],
})

const actions = /\/(JS|JavaScript|Launch|OpenAction|AA|URI|EmbeddedFile)\b/

/** The document without compression, as qpdf unpacks it, to be searched for what a report must never hold. */
const unpacked = (pdf: Uint8Array): string =>
  withFile(pdf, (path) => runOutsideTool('qpdf', ['--qdf', '--object-streams=disable', path, '-']).output)

const squeezed = (text: string): string => text.replace(/\s+/gu, '')

const rightToLeft = /[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFF\u{10800}-\u{10FFF}\u{1E800}-\u{1EFFF}]/u

/** The foot of every page, which comes between the halves of a text that crosses pages. */
const footLines = /^Report R-2601-1 · order.*\n^Ledger entry 41, .*\n/gm

/** pdftotext turns around what it takes for right-to-left; of such a text only the characters are compared. */
const inOneDirection = (text: string): string =>
  rightToLeft.test(text) ? Array.from(printable(text)).sort().join('') : text

describe('any text', () => {
  const anyText = fc.oneof(
    { weight: 3, arbitrary: fc.string({ unit: 'grapheme', maxLength: 60 }) },
    { weight: 2, arbitrary: fc.string({ unit: 'binary', maxLength: 40 }) },
    { weight: 2, arbitrary: fc.string({ unit: 'grapheme-ascii', maxLength: 400 }) },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        ') Tj ET /JS (app.alert(1))',
        '<script>alert(1)</script> & "quoted" \\ \\\\ (((',
        '\u0000\u0007\u001b[31mred',
        'مرحبا بالعالم',
        'שלום עולם',
        '車のタイヤ警告灯',
        '👨‍👩‍👧‍👦 🚗 ⚠️',
        'Zażółć gęślą jaźń, Ågström, ſ, Ő',
        'e\u0301 a\u0308 o\u0302',
        'a'.repeat(2_000),
      ),
    },
  )

  it('goes through the PDF and comes back, for 500 texts', { timeout: 120_000 }, async () => {
    const texts = fc.sample(anyText, { numRuns: 500, seed: 20_260_112 })
    const pdf = await drawReport(reportTelling(texts))
    expect(withFile(pdf, (path) => runOutsideTool('qpdf', ['--check', path])).status).toBe(0)
    expect(unpacked(pdf)).not.toMatch(actions)
    const back = squeezed(textOf(pdf, '-raw', '-nopgbrk').replace(footLines, ''))
    const lost = texts.flatMap((text, index) => {
      const [, after = ''] = back.split(`#${index}:`)
      const found = after.slice(0, after.indexOf(':end'))
      const sent = squeezed(printable(text))
      return inOneDirection(sent) === inOneDirection(found) ? [] : [{ sent, found }]
    })
    expect(lost).toEqual([])
  })

  it('in every place of page one leaves the file well formed', async () => {
    const hostile = '(/JS) << /Launch >> ] endobj %%EOF <b>&amp; \u202e אבג 👩‍🔧'
    const { pageOne } = finishedOrder
    const pdf = await drawReport({
      ...finishedOrder,
      reportNumber: hostile,
      orderNumber: hostile,
      checkAddress: `https://desk.tamber.example/${encodeURIComponent(hostile)}`,
      pageOne: {
        ...pageOne,
        shop: { name: hostile, lines: [hostile] },
        told: { text: { kind: 'words', text: hostile.repeat(40) }, entry: 2 },
        found: pageOne.found.map((part) => ({
          ...part,
          word: hostile,
          sentence: hostile,
          remedy: [hostile],
        })),
        did: [hostile, hostile, hostile, hostile],
        notDone: [{ title: hostile, answer: 'No' }],
        next: [hostile],
      },
    })
    expect(withFile(pdf, (path) => runOutsideTool('qpdf', ['--check', path])).status).toBe(0)
    expect(unpacked(pdf)).not.toMatch(/\/S\s*\/(JavaScript|Launch|URI)/)
    expect(saidAbout('pdfinfo', pdf)).toMatch(/^JavaScript: +no$/m)
  })
})
