import type { Page } from 'playwright-core'
import { tap, touchAndHold } from './touch.ts'

export type Person = { readonly name: string; readonly pin: string }
export const ines: Person = { name: 'Ines Halloran-Voss', pin: '264903' }
export const greta: Person = { name: 'Greta Lund-Sorrel', pin: '357048' }

export const button = (page: Page, name: string | RegExp, exact = false) =>
  page.getByRole('button', { name, exact })
export const heading = (page: Page) => page.locator('h1').first()

/** Presses the pad's keys, one after the other. */
export const type = async (page: Page, figure: string): Promise<void> => {
  for (const key of figure) await tap(button(page, key === '.' ? 'point' : key, true))
}

export const shows = (page: Page, title: string | RegExp): Promise<void> =>
  page.getByRole('heading', { level: 1, name: title }).waitFor()

/** Waits until the screen shows another step than the one named. */
export const leaves = async (page: Page, title: string): Promise<void> => {
  await page.waitForFunction((was) => document.querySelector('h1')?.textContent !== was, title)
}

/** Waits until nothing that was tapped is left on the tablet, and the bay is on it whole: it may be out of the network now. */
export const allSent = (page: Page): Promise<void> => page.getByText('All sent', { exact: true }).waitFor()

/** Presses and holds until the button has taken it, as a round is sealed and a wheel is reported off. */
export const hold = (page: Page, name: string | RegExp): Promise<void> => touchAndHold(button(page, name))

export const enroll = async (page: Page, code: string): Promise<void> => {
  await page.getByLabel('Code from the desk').fill(code)
  await page.getByLabel('Name of this tablet').fill('Bay 9')
  await tap(button(page, 'Enroll'))
}

export const signIn = async (page: Page, person: Person): Promise<void> => {
  await tap(button(page, person.name).last())
  await type(page, person.pin)
  await button(page, new RegExp(`Signed in: ${person.name}`)).waitFor()
}

/** The tablet has locked itself and shows the pad of whoever worked on it. */
export const unlock = async (page: Page, { name, pin }: Person): Promise<void> => {
  await shows(page, name)
  await type(page, pin)
  await button(page, new RegExp(`Signed in: ${name}`)).waitFor()
}

/** What a technician read at one wheel; `null` for a sensor that stayed silent. */
export type WheelAsRead = { readonly gauge: string; readonly sensor: string | null; readonly id: string }

export const names = { LF: 'left front', RF: 'right front', RR: 'right rear', LR: 'left rear' } as const
export type Wheels = Readonly<Record<keyof typeof names, WheelAsRead>> & {
  readonly SP: { readonly gauge: string }
}

/** A cold morning outdoors, as the first task of an arrival check. */
export const recordTemperatures = async (page: Page) => {
  await type(page, '27')
  await tap(button(page, /^Next/))
  await tap(button(page, /^Cold/))
  await tap(button(page, 'Record the temperatures'))
  await shows(page, 'Watch the warning light')
}

/** The whole arrival check, task by task, in the tablet's order. */
export const checkArrival = async (page: Page, wheels: Wheels, temperature: string): Promise<void> => {
  await shows(page, 'Note the temperatures')
  await type(page, temperature)
  await tap(button(page, /^Next/))
  await tap(button(page, /^Cold/))
  await tap(button(page, 'Record the temperatures'))
  await shows(page, 'Watch the warning light')
  await tap(button(page, /^Lights at key-on/))
  await tap(button(page, /^Flashes, then solid/))
  await readModule(page, wheels)
  await shows(page, /Which gauge/)
  await tap(button(page, /GA-1/))
  for (const [wheel, name] of Object.entries(names))
    await gauge(page, name, wheels[wheel as keyof typeof names].gauge)
  await gauge(page, 'spare', wheels.SP.gauge)
  for (const [wheel, name] of Object.entries(names))
    await ask(page, name, wheels[wheel as keyof typeof names])
  await lookAtTires(page)
}

/**
 * The rest of an arrival check of which the temperatures, the light and all but the last wheel and the spare were noted, with the
 * vehicle's own list first.
 */
export const finishArrival = async (page: Page, wheels: Wheels): Promise<void> => {
  await readModule(page, wheels)
  await shows(page, /Which gauge/)
  await tap(button(page, /GA-1/))
  await gauge(page, names.LR, wheels.LR.gauge)
  await gauge(page, 'spare', wheels.SP.gauge)
  await ask(page, names.LR, wheels.LR)
  await lookAtTires(page)
}

const lookAtTires = async (page: Page): Promise<void> => {
  for (const name of [...Object.values(names), 'spare']) await look(page, name)
}

/** The last decimal records it. */
const gauge = async (page: Page, name: string, figure: string): Promise<void> => {
  await shows(page, `Gauge the ${name} tire`)
  await type(page, figure)
}

const ask = async (page: Page, name: string, { sensor, id }: WheelAsRead): Promise<void> => {
  await shows(page, `Ask the ${name} sensor`)
  if (sensor === null) {
    await tap(button(page, /^Silent/))
    await tap(button(page, '3×', true))
    return
  }
  await tap(button(page, new RegExp(`same as stored.*${id.slice(-4)}`)))
  await tap(button(page, /^27 °F/))
  await type(page, sensor)
}

/** Nothing wrong with any tire of this vehicle; the tread is seven thirty-seconds. */
const look = async (page: Page, name: string): Promise<void> => {
  await shows(page, `Look at the ${name} tire`)
  await tap(button(page, /^All sound/))
  await tap(button(page, '7', true))
}

/** The reader's list is scanned or pasted at once. */
const readModule = async (page: Page, wheels: Wheels): Promise<void> => {
  await shows(page, 'Read what the vehicle stored')
  await tap(button(page, /^Can be read/))
  await paste(page, (['LF', 'RF', 'RR', 'LR'] as const).map((wheel) => wheels[wheel].id).join('\n'))
  await tap(button(page, /^No signal/))
  await tap(button(page, /^Next/))
  await tap(button(page, 'RR', true))
  await tap(button(page, 'Record what is stored'))
}

/** Pastes by the pad's own button, as after "copy" in the reader's program. */
export const paste = async (page: Page, text: string): Promise<void> => {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write'])
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text)
  await tap(button(page, 'Paste', true))
}
