import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { SentEntry } from '@bayledger/contract/entries'
import { describe, expect, it, onTestFailed } from 'vitest'
import { programText } from '../support/program-text.ts'
import { runOutsideTool } from '../support/run-outside-tool.ts'
import { button, checkArrival, enroll, ines, leaves, shows, signIn } from './support/bay.ts'
import { workFigures as work, workThrough } from './support/bay-steps.ts'
import { decideAndSign } from './support/customer.ts'
import {
  customerLink,
  enrollmentCode,
  handBack,
  issueEstimate,
  openOrder,
  sealAndDownload,
  signInAtDesk,
  writeUp,
} from './support/desk.ts'
import { customer, plate, wheels } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { handOf, tap } from './support/touch.ts'

const words = 'The tire light flashes for about a minute, then it stays on.'

/** The proof drive takes 23 minutes by the clock of the tablet. */
const browser = setStage(30)

const isWholeAndValid = (file: string): boolean => {
  const { output } = runOutsideTool('pdfsig', [file])
  return output.includes('Signature is Valid') && output.includes('Total document signed')
}

describe('the whole job, from the complaint to the sealed report', () => {
  let pdf: string
  let text: string

  it('is done at the desk, in the bay and on the customer’s phone', async () => {
    onTestFailed(() => browser().picture('out'))
    const desk = await browser().open('desk', '/desk/sign-in')
    await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
    const code = await enrollmentCode(desk)
    const number = await writeUp(desk, { customer, plate, words })
    expect(number).toMatch(/^T-\d{4}$/)

    const bay = await browser().open('bay', '/bay/enroll')
    await enroll(bay, code)
    await signIn(bay, ines)
    await tap(button(bay, `Take it: ${plate}`))
    const hand = await handOf(bay)
    const before = hand.touches()
    await checkArrival(bay, wheels, '27')
    expect(
      hand.touches() - before,
      'touches of the arrival, five wheels and their tires',
    ).toBeLessThanOrEqual(70)
    await shows(bay, /readings say/)
    expect(await bay.locator('body').textContent()).toMatch(/right rear/)
    await tap(button(bay, 'I agree: confirm the findings'))
    await shows(bay, 'Nothing for the bay now')

    await openOrder(desk, customer)
    await desk
      .getByText(/Sensor does not answer/)
      .first()
      .waitFor()
    await issueEstimate(desk)
    const link = await customerLink(desk)

    const phone = await browser().open('customer', new URL(link).pathname + new URL(link).hash)
    await phone
      .getByText(/The sensor in the right rear wheel no longer answers/)
      .first()
      .waitFor()
    await decideAndSign(phone, customer)

    await leaves(bay, 'Nothing for the bay now')
    const started = hand.touches()
    const done = await workThrough(bay, work)
    expect(hand.touches() - started, 'touches of a one-sensor job').toBeLessThanOrEqual(130)
    expect(done.findIndex((title) => title.startsWith('Second person checks'))).toBeLessThan(
      done.findIndex((title) => title.startsWith('Proof drive')),
    )

    // The desk never left the order: its head follows what the bay wrote.
    await desk
      .locator('.order-head')
      .getByText(/Note the payment and seal the report|Seal the report/)
      .waitFor()
    await openOrder(desk, customer)
    pdf = await sealAndDownload(desk)
    await handBack(desk, work.odometerIn)
    const orderId = /[0-9a-f-]{36}/.exec(desk.url())?.[0] ?? ''
    const { entries } = await desk.evaluate(
      async (path) => (await fetch(path)).json() as Promise<{ entries: SentEntry[] }>,
      `/api/orders/${orderId}`,
    )
    expect(entries.length).toBeGreaterThan(50)
    for (const { kind, payload, given } of entries) expect(programText({ payload, given }), kind).toEqual([])
    await phone.reload()
    await phone.getByRole('link', { name: /Open the report/ }).waitFor()
    // A tablet queries the session before anyone is signed in; the browser logs the answer, 401, as an error.
    expect(browser().noise.filter((line) => !/401.*\/api\/sessions\/current$/.test(line))).toEqual([])
  })

  it('ends in a PDF whose signature is valid over the whole document, and breaks with a changed byte', () => {
    expect(isWholeAndValid(pdf)).toBe(true)
    expect(runOutsideTool('qpdf', ['--check', pdf]).status).toBe(0)
    expect(runOutsideTool('pdfinfo', [pdf]).output).toMatch(/Tagged:\s+yes/)
    const bytes = readFileSync(pdf)
    const folder = mkdtempSync(join(tmpdir(), 'bayledger-journey-'))
    const changed = join(folder, 'changed.pdf')
    for (const at of signedPlaces(bytes)) {
      const broken = Buffer.from(bytes)
      broken[at] = (broken[at] ?? 0) ^ 1
      writeFileSync(changed, broken)
      expect(isWholeAndValid(changed), `byte ${at} changed`).toBe(false)
    }
    rmSync(folder, { recursive: true })
  })

  it('carries every number that was typed, in the right wheel’s row', () => {
    text = runOutsideTool('pdftotext', ['-layout', pdf, '-']).output
    const rowsOf = (wheel: string) =>
      text.split('\n').filter((line) => new RegExp(`\\b${wheel}\\b`).test(line))
    for (const wheel of ['LF', 'RF', 'RR', 'LR'] as const) {
      const rows = rowsOf(wheel)
      expect(
        rows.some((row) => row.includes(wheels[wheel].gauge)),
        `${wheel} gauge`,
      ).toBe(true)
      const sensor = wheels[wheel].sensor
      if (sensor !== null) {
        expect(
          rows.some((row) => row.includes(sensor)),
          `${wheel} sensor`,
        ).toBe(true)
        expect(
          rows.some((row) => row.includes(wheels[wheel].id.slice(-4))),
          `${wheel} ID`,
        ).toBe(true)
      }
    }
    // As left, every road wheel was heard again; on arrival all but the silent one gave their temperature.
    for (const wheel of ['LF', 'RF', 'RR', 'LR'] as const) {
      expect(
        rowsOf(wheel).some((row) => row.includes(`${work.closingSensor} psi`) && row.includes('55 °F')),
        `${wheel} as left`,
      ).toBe(true)
      const { sensor } = wheels[wheel]
      if (sensor !== null)
        expect(rowsOf(wheel).some((row) => row.includes('27 °F') && row.includes(sensor))).toBe(true)
    }
    expect(text).toMatch(/Outdoors 27 °F/)
    expect(rowsOf('RR').some((row) => row.includes('silent, 3 tries'))).toBe(true)
    expect(rowsOf('SP').some((row) => row.includes(wheels.SP.gauge))).toBe(true)
    expect(rowsOf('RR').some((row) => row.includes(work.newId.slice(-4)))).toBe(true)
    for (const figure of [
      work.partNumber,
      work.kit,
      '50,001',
      '50,015',
      `${work.minutes} min`,
      '83',
      'W-07',
      words,
    ])
      expect(text.replace(/\s+/g, ' '), figure).toContain(figure)
  })
})

/**
 * Places in what the signature covers: /ByteRange names the two stretches around the signature's own container, whose
 * unused end no signature can cover.
 */
const signedPlaces = (bytes: Buffer): number[] => {
  const range = /\/ByteRange\s*\[\s*(\d+)\s+(\d+)\s+(\d+)\s+(\d+)/.exec(bytes.toString('latin1'))
  if (range === null) throw new Error('the report names no signed bytes')
  const [first = 0, firstLength = 0, second = 0, secondLength = 0] = range.slice(1).map(Number)
  return [
    first + 2_000,
    first + Math.floor(firstLength / 2),
    first + firstLength - 200,
    second + Math.floor(secondLength / 2),
  ]
}
