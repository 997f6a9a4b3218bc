import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { drawReport } from '@bayledger/report/drawing/draw-report'
import { english } from '@bayledger/wording/en/english'
import { spanish } from '@bayledger/wording/es/spanish'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { textsOf } from '../../../../packages/report/test-support/texts-of.ts'
import { saidByCode } from '../../../../packages/wording/test-support/said-by-code.ts'
import { demoShop } from '../../../../prisma/seeds/demo-shop.ts'
import { runOutsideTool } from '../../../../tests/support/run-outside-tool.ts'
import { demoReport } from './demo-report.ts'

const demo = demoShop('2026-01-12T11:40:00-05:00')
const finished = demo.orders.filter(({ end }) => end !== null)

const folder = mkdtempSync(join(tmpdir(), 'bayledger-spanish-report-'))
const file = join(folder, 'T-2605.pdf')
beforeAll(async () => writeFileSync(file, await drawReport(demoReport('T-2605', 'es'))))
afterAll(() => rmSync(folder, { recursive: true }))

/** What only English says, by the codes of what a customer reads. */
const inSpanish = saidByCode(spanish)
const spanishWords = new Set(Object.values(inSpanish))
const onlyEnglish = Object.entries(saidByCode(english))
  .filter(([code, words]) => Object.hasOwn(inSpanish, code) && !spanishWords.has(words))
  .map(([, words]) => words)
const phrases = onlyEnglish.filter((words) => words.includes(' '))
const labels = new Set(onlyEnglish)

describe('a report in Spanish', () => {
  it.each(finished.map(({ number }) => number))(
    '%s leaves nothing in English but what a person typed',
    (number) => {
      const order = finished.find((one) => one.number === number)
      const typed = [
        ...(order?.lines ?? []).flatMap(({ sides }) => sides.map(({ text }) => text)),
        ...(order?.entries ?? []).flatMap(({ payload }) => textsOf(payload).map(([, text]) => text)),
      ].filter((text) => text.includes(' '))
      const report = demoReport(number, 'es')
      const left = textsOf(report).flatMap(([path, text]) => {
        const ours = typed.reduce((rest, words) => rest.replaceAll(words, ''), text)
        const english = phrases.filter((phrase) => ours.includes(phrase))
        return labels.has(ours) || english.length > 0 ? [[path, text, ...english]] : []
      })
      expect(left).toEqual([])
    },
  )

  it('has the language of the file, and days and times by its locale', () => {
    expect(runOutsideTool('qpdf', ['--qdf', '--object-streams=disable', file, '-']).output).toMatch(
      /\/Lang \(es-US\)/,
    )
    const text = runOutsideTool('pdftotext', ['-raw', '-l', '1', file, '-']).output.replace(/\s+/g, ' ')
    expect(text).toMatch(/\d{1,2} (ene|feb|dic) \d{4}, \d{1,2}:\d{2} [ap]\.m\. E[SD]T/)
    expect(text).toContain('¿Puedo manejarlo?')
    expect(text).toContain('¿Está arreglado?')
  })

  it('has the same figures, in the same places, as the English one', () => {
    const figures = (language: 'en' | 'es') =>
      textsOf(demoReport('T-2605', language)).filter(([path]) => path.endsWith('.value'))
    expect(figures('es')).toEqual(figures('en'))
    expect(figures('es').length).toBeGreaterThan(20)
  })
})
