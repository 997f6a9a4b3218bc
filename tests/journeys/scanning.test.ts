import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { browserFlags, faces, patienceMilliseconds } from '../support/browser.ts'
import { outsideTool } from '../support/outside-tools.ts'
import { button, enroll, ines, shows, signIn, type } from './support/bay.ts'
import { openDesk, takeForArrival, writeArrival } from './support/begin.ts'
import { writeFilm } from './support/camera-film.ts'
import { signInAtDesk } from './support/desk.ts'
import { scanByKeys } from './support/scanner.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

let orderId = ''
const browser = setStage(null, async (database) => {
  orderId = await writeArrival(database)
})
const vin = '1ZZ12AB4XR0000004'
const folder = mkdtempSync(join(tmpdir(), 'bayledger-film-'))

let plain: Page
let bay: Page
let address: string
let withCamera: Browser
const outside: string[] = []

/** A page of the browser that has a camera; whatever it asks of another address is kept. */
const open = async (face: 'desk' | 'bay', path: string): Promise<Page> => {
  const context = await withCamera.newContext({
    ...faces[face],
    baseURL: address,
    locale: 'en-US',
    permissions: ['camera'],
  })
  context.setDefaultTimeout(patienceMilliseconds)
  const page = await context.newPage()
  page.on('request', (request) => {
    if (!/^(data|blob):/.test(request.url()) && new URL(request.url()).origin !== address)
      outside.push(request.url())
  })
  await page.goto(path)
  return page
}

beforeAll(async () => {
  address = browser().address
  plain = await openDesk(browser())
  const film = join(folder, 'labels.y4m')
  writeFilm(film, [
    { symbology: 'code39', text: `I${vin}` },
    { symbology: 'datamatrix', text: 'ID:1A2B3C99;LOT 2291' },
  ])
  withCamera = await chromium.launch({
    executablePath: outsideTool('chromium'),
    args: [
      ...browserFlags,
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${film}`,
    ],
    env: { ...process.env, HOME: folder },
  })
})
afterAll(async () => {
  await withCamera?.close()
  rmSync(folder, { recursive: true, force: true })
})

/** Whether any camera of the page is running. */
const isFilming = (page: Page): Promise<boolean> =>
  page.evaluate(() => [...document.querySelectorAll('video')].some(({ srcObject }) => srcObject !== null))

/** The row of the sensor's ID once the label was read. */
const taken = () => bay.locator('.row-cell', { hasText: 'Sensor ID' }).filter({ hasText: '1A2B3C99' })

/** A row of the form by its name and what it holds. */
const cell = (label: string, value: string) =>
  bay.locator('.row-cell', { hasText: label }).filter({ hasText: value })

/** The sensor readings that the server's ledger holds of the order, by wheel. */
const sensorsWritten = async (): Promise<Record<string, unknown>> =>
  Object.fromEntries(
    (await browser().desk.entriesOf(orderId)).flatMap(({ kind, payload }) =>
      kind === 'wheel.checked' && payload.sensor ? [[payload.wheel, payload.sensor]] : [],
    ),
  )

describe('a camera that is missing', () => {
  it('is told, and the keyboard goes on in the field', async () => {
    await plain.getByRole('link', { name: 'Write up a complaint' }).first().click()
    await button(plain, 'Scan the VIN').click()
    await plain.getByText('This device has no camera that fits. Use a scanner, or type it.').waitFor()
    await button(plain, 'Type it instead').click()
    await plain.keyboard.type('1ZZ', { delay: 80 })
    expect(await plain.getByLabel('VIN', { exact: true }).inputValue()).toBe('1ZZ')
  })
})

describe('a scanner that types, at the desk', () => {
  it('fills in the VIN wherever the focus is, and leaves what a hand typed', async () => {
    onTestFailed(() => browser().picture('out'))
    await plain.goto('/desk/write-up')
    await plain.getByLabel('Customer’s name').fill('Quillon')
    await scanByKeys(plain, `I${vin}`)
    await plain.getByText(/model year 2024/).waitFor()
    expect(await plain.getByLabel('VIN', { exact: true }).inputValue()).toBe(vin)
    expect(await plain.getByLabel('Customer’s name').inputValue()).toBe('Quillon')
  })

  it('presses no button by its Enter, and what it sent is told', async () => {
    onTestFailed(() => browser().picture('out'))
    await button(plain, 'Sign out').focus()
    await scanByKeys(plain, '1A2B3C12')
    await plain
      .getByText('This is the ID of a sensor. Scan the VIN, at the windshield or on the door.')
      .waitFor()
    expect(await button(plain, 'Sign out').count()).toBe(1)
    await button(plain, 'Close').click()
  })
})

describe('a scanner that types, in the bay', () => {
  beforeAll(async () => {
    bay = await open('bay', '/bay/enroll')
    await enroll(bay, await browser().desk.enrollmentCode())
    await signIn(bay, ines)
    await takeForArrival(bay)
  })

  it('reads all stored IDs line by line', async () => {
    onTestFailed(() => browser().picture('out'))
    await type(bay, '27')
    await tap(button(bay, /^Next/))
    await tap(button(bay, /^Cold/))
    await tap(button(bay, 'Record the temperatures'))
    await tap(button(bay, /^Lights at key-on/))
    await tap(button(bay, /^Flashes, then solid/))
    await shows(bay, 'Read what the vehicle stored')
    await tap(button(bay, /^Can be read/))
    await scanByKeys(bay, '1A2B3C10\n1A2B3C11\n1A2B3C12\n1A2B3C13')
    await cell('Stored for LR', '1A2B3C13').waitFor()
    expect(await cell('Stored for LF', '1A2B3C10').count()).toBe(1)
  })

  it('is told that a VIN is no sensor ID, and the ID goes into its field while a figure is asked for', async () => {
    onTestFailed(() => browser().picture('out'))
    await tap(button(bay, /^left front/i))
    await tap(button(bay, /GA-1/))
    await tap(button(bay, 'Sensor', true))
    await shows(bay, 'Ask the left front sensor')
    await tap(button(bay, /^Answers/).last())
    await tap(bay.locator('.row-cell', { hasText: 'Pressure' }))
    await scanByKeys(bay, `I${vin}`)
    await bay.getByText('This is a VIN. Scan the label of the sensor.').waitFor()
    await tap(button(bay, 'Close', true))
    await scanByKeys(bay, '1a2b3c99')
    await cell('Sensor ID', '1A2B3C99').waitFor()
    expect(await cell('Pressure', 'not answered yet').count()).toBe(1)
  })

  it('reads all sensors from one text, records nothing unseen, and names what it cannot read', async () => {
    onTestFailed(() => browser().picture('out'))
    await tap(button(bay, 'All at once', true))
    await shows(bay, 'All sensors at once')
    await scanByKeys(
      bay,
      'LF, 1A2B3C10, 31.2 psi, 27 F, ok\nRF, 1A2B3C11, 214 kPa\nRR, silent, 3\nLR, 1A2B3C13, 31',
    )
    await bay.getByText('ID 1A2B3C11 · 214 kPa').waitFor()
    await bay.getByText(/^Line 4, LR, pressure: "31" has no unit/).waitFor()
    await bay.getByText('Nothing read for LR: ask there one by one.').waitFor()
    expect(await sensorsWritten()).toEqual({})
    await tap(button(bay, 'Record LF RF RR'))
    await bay.waitForFunction(() => document.querySelector('h1')?.textContent !== 'All sensors at once')
    await expect.poll(() => sensorsWritten().then((found) => Object.keys(found))).toEqual(['LF', 'RF', 'RR'])
    expect(await sensorsWritten()).toMatchObject({
      LF: { answer: 'answered', id: '1A2B3C10', pressure: { value: 31.2, unit: 'psi' }, battery: 'ok' },
      RF: { answer: 'answered', pressure: { value: 214, unit: 'kPa' }, temperature: null },
      RR: { answer: 'silent', tries: 3 },
    })
  })
})

describe('the camera', () => {
  it('reads the VIN at the desk, and is closed afterwards', async () => {
    const desk = await open('desk', '/desk/sign-in')
    await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
    await desk.getByRole('link', { name: 'Write up a complaint' }).first().click()
    await button(desk, 'Scan the VIN').click()
    await desk.getByText(/model year 2024/).waitFor()
    expect(await desk.getByLabel('VIN', { exact: true }).inputValue()).toBe(vin)
    expect(await isFilming(desk)).toBe(false)
    expect(outside).toEqual([])
  })

  it('passes over a VIN where a sensor’s label is wanted, says so, and takes the label', async () => {
    await tap(button(bay, /^left rear/i))
    await tap(button(bay, 'Sensor', true))
    await tap(button(bay, /^Answers/).last())
    const heard = bay.evaluate(
      () =>
        new Promise<boolean>((resolve) => {
          new MutationObserver(() => {
            if (document.body.textContent?.includes('This is a VIN. Scan the label of the sensor.'))
              resolve(true)
          }).observe(document.body, { subtree: true, childList: true, characterData: true })
        }),
    )
    await tap(button(bay, 'Scan the sensor'))
    await taken().waitFor()
    expect(await isFilming(bay)).toBe(false)
    expect(outside).toEqual([])
    // The film may begin with the sensor's label: then the VIN comes up at the second look.
    await tap(bay.locator('.row-cell', { hasText: 'Sensor ID' }))
    for (
      let looks = 0;
      looks < 6 && !(await Promise.race([heard, bay.waitForTimeout(50).then(() => false)]));
      looks += 1
    ) {
      await tap(button(bay, 'Scan the sensor'))
      await taken().waitFor()
      await bay.getByRole('dialog').waitFor({ state: 'detached' })
      await tap(bay.locator('.row-cell', { hasText: 'Sensor ID' }))
    }
    expect(await heard).toBe(true)
  })

  it.each([
    ['/desk', true],
    ['/bay', true],
    ['/bay.html', true],
    ['/customer', false],
    ['/api/floor', false],
  ])('and its reader may run at %s: %s', async (path, may) => {
    const { headers } = await fetch(`${address}${path}`)
    expect(headers.get('permissions-policy')).toContain(may ? 'camera=(self)' : 'camera=()')
    expect(headers.get('content-security-policy')?.includes("'wasm-unsafe-eval'")).toBe(may)
  })
})
