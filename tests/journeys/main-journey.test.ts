import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, it, onTestFailed } from 'vitest'
import { programText } from '../support/program-text.ts'
import { runOutsideTool } from '../support/run-outside-tool.ts'
import { button, checkArrival, enroll, ines, leaves, shows, signIn, type } from './support/bay.ts'
import { workFigures as work, workThrough } from './support/bay-steps.ts'
import { openDesk } from './support/begin.ts'
import { decideAndSign } from './support/customer.ts'
import {
  customerLink,
  enrollmentCode,
  handBack,
  issueEstimate,
  openOrder,
  sealAndDownload,
  writeUp,
} from './support/desk.ts'
import { customer, plate, wheels } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { centerOf, handOf, slowNetwork, tap } from './support/touch.ts'

const words = 'The tire light flashes for about a minute, then it stays on.'

/** The proof drive takes 23 minutes by the clock of the tablet. */
const browser = setStage(30)

/** The bay is behind a lifted truck: each answer of the server takes so long. */
const awayMilliseconds = 700

const isWholeAndValid = (file: string): boolean => {
  const { output } = runOutsideTool('pdfsig', [file])
  return output.includes('Signature is Valid') && output.includes('Total document signed')
}

describe('the whole job, from the complaint to the sealed report, with the server 700 ms away', () => {
  let pdf: string
  let text: string

  it('is done at the desk, in the bay and on the customer’s phone', async () => {
    onTestFailed(() => browser().picture('out'))
    const desk = await openDesk(browser())
    const code = await enrollmentCode(desk)
    const number = await writeUp(desk, { customer, plate, words })
    expect(number).toMatch(/^T-\d{4}$/)

    const bay = await browser().open('bay', '/bay/enroll')
    await enroll(bay, code)
    await signIn(bay, ines)
    await tap(button(bay, `Take it: ${plate}`))
    await shows(bay, 'Note the temperatures')
    const orderId = /[0-9a-f-]{36}/.exec(bay.url())?.[0] ?? ''
    await slowNetwork(bay, awayMilliseconds)
    const hand = await handOf(bay)
    const before = hand.touches()
    await checkArrival(bay, wheels, '27')
    expect(
      hand.touches() - before,
      'touches of the arrival, five wheels and their tires',
    ).toBeLessThanOrEqual(70)
    await shows(bay, /readings say/)
    expect(await bay.locator('body').textContent()).toMatch(/right rear/)
    await isWrittenAsShown(orderId)
    await losesNoKey(bay, orderId)
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
      .getByText(/The sensor in the right rear wheel does not work/)
      .first()
      .waitFor()
    await decideAndSign(phone, customer)
    // A page that is open costs something, and nobody looks at this one for a while.
    await phone.close()

    await leaves(bay, 'Nothing for the bay now')
    const started = hand.touches()
    const done = await workThrough(bay, work)
    expect(hand.touches() - started, 'touches of a one-sensor job').toBeLessThanOrEqual(130)
    const steps = done.filter((title) => !title.startsWith('Which '))
    expect(steps).toHaveLength(34)
    expect(new Set(steps).size, 'no step came back').toBe(steps.length)
    await bay.getByText(/Not yet sent/).waitFor({ state: 'detached' })
    expect(await button(bay, /Not taken/).count()).toBe(0)
    expect(done.findIndex((title) => title.startsWith('Second person checks'))).toBeLessThan(
      done.findIndex((title) => title.startsWith('Proof drive')),
    )

    // The desk never left the order: its head follows what the bay wrote. From now on it is as far from the server.
    await slowNetwork(desk, awayMilliseconds)
    await desk
      .locator('.order-head')
      .getByText(/Note the payment and seal the report|Seal the report/)
      .waitFor()
    await openOrder(desk, customer)
    pdf = await sealAndDownload(desk)
    await handBack(desk, work.odometerIn)
    const entries = await browser().desk.entriesOf(orderId)
    expect(entries.length).toBeGreaterThan(50)
    for (const { kind, payload, given } of entries) expect(programText({ payload, given }), kind).toEqual([])
    const later = await browser().open('customer', new URL(link).pathname + new URL(link).hash)
    await later.getByRole('link', { name: /Open the report/ }).waitFor()
    // A tablet queries the session before anyone is signed in, and reads on for a moment after it has locked itself; the
    // browser logs the answer, 401, as an error.
    const isNoSession = /401.*\/api\/sessions\/current$|^bay: .*401.*\/api\/(floor|orders\/[0-9a-f-]+)$/
    expect(browser().noise.filter((line) => !isNoSession.test(line))).toEqual([])
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

/** What the ledger holds of an order's wheels, once it has so many readings. */
const checkedWheels = async (orderId: string, count: number) => {
  const read = async () =>
    (await browser().desk.entriesOf(orderId)).flatMap((entry) =>
      entry.kind === 'wheel.checked' ? [entry.payload] : [],
    )
  await expect.poll(async () => (await read()).length).toBe(count)
  return read()
}

/** Every figure is at the wheel that the screen showed, and what nobody read is not on record. */
const isWrittenAsShown = async (orderId: string): Promise<void> => {
  const checked = await checkedWheels(orderId, 9)
  const gauged = checked.flatMap(({ wheel, gauge }) =>
    gauge === null ? [] : [[wheel, gauge.pressure.value]],
  )
  expect(Object.fromEntries(gauged)).toEqual(
    Object.fromEntries(Object.entries(wheels).map(([wheel, read]) => [wheel, Number(read.gauge)])),
  )
  const sensors = checked.flatMap(({ sensor }) => (sensor === null ? [] : [sensor]))
  expect(sensors.map(({ answer }) => answer)).toEqual(['answered', 'answered', 'silent', 'answered'])
  for (const sensor of sensors.filter(({ answer }) => answer === 'answered'))
    expect(sensor).toMatchObject({ frequencyMHz: null, battery: null })
  const seen = async () =>
    (await browser().desk.entriesOf(orderId)).filter(({ kind }) => kind === 'tire.inspected').length
  await expect.poll(seen).toBe(5)
}

/** Two tires are gauged again: by two thumbs that overlap, and right after a figure was recorded. */
const losesNoKey = async (bay: Page, orderId: string): Promise<void> => {
  const hand = await handOf(bay)
  await tap(button(bay, /^left front/i))
  await shows(bay, 'Gauge the left front tire')
  const clicks = await bay.evaluateHandle(() => {
    const seen: string[] = []
    addEventListener('click', ({ target }) => seen.push(String(target)), { capture: true })
    return seen
  })
  const [three, one] = [await centerOf(button(bay, '3', true)), await centerOf(button(bay, '1', true))]
  await hand.down(three, 1)
  await hand.down(one, 2)
  await bay.waitForTimeout(80)
  await hand.up(1)
  await hand.up(2)
  expect(await bay.locator('.pad-entry').inputValue()).toBe('31')
  await type(bay, '.6')
  // A key has pressed when the finger leaves it: the browser makes no click of the touch besides, which a slow tablet would feel.
  expect(await clicks.jsonValue()).toEqual([])
  await shows(bay, /readings say/)
  await tap(button(bay, /^right front/i))
  await type(bay, '31.4')
  await shows(bay, /readings say/)
  expect((await checkedWheels(orderId, 11)).slice(-2)).toMatchObject([
    { wheel: 'LF', gauge: { pressure: { value: 31.6 } } },
    { wheel: 'RF', gauge: { pressure: { value: 31.4 } } },
  ])
}

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
