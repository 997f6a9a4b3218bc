import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { button, greta, heading, hold, ines, leaves, type Person, type, unlock } from './bay.ts'
import { tap } from './touch.ts'

/** What the technician types while working; every one of these must be on the report. */
type WorkFigures = {
  readonly partNumber: string
  readonly newId: string
  /** Where a job has several new sensors: the ID of each, by the name of its wheel. */
  readonly newIds?: Readonly<Record<string, string>>
  /** In a rotation: the place from which each wheel comes, by the name of its new place. */
  readonly comesFrom?: Readonly<Record<string, string>>
  /** The wheels that the vehicle learns, in order; the four of the road where it is not said. */
  readonly learns?: readonly string[]
  readonly frequency: string
  readonly kit: string
  readonly odometerOut: string
  readonly odometerIn: string
  readonly minutes: string
  readonly closingSensor: string
  /** Who works; Ines where it is not said. */
  readonly by?: Person
}

export const workFigures: WorkFigures = {
  partNumber: 'TS-315-C',
  newId: '5D00AA01',
  frequency: '315',
  kit: 'TK-C',
  odometerOut: '50001',
  odometerIn: '50015',
  minutes: '23',
  closingSensor: '32.8',
}

type Doing = (page: Page, figures: WorkFigures) => Promise<void>

/** One entry for each kind of step: how its screen is filled, by the words of its heading. */
const doings: readonly (readonly [RegExp, Doing])[] = [
  [/^Which torque wrench/, (page) => tap(button(page, /W-07/))],
  [/^Which gauge/, (page) => tap(button(page, /GA-1/))],
  [
    /^Draw the sensor/,
    async (page, { partNumber }) => {
      await tap(button(page, partNumber))
      await tap(button(page, 'Record the part'))
    },
  ],
  [
    /^Program/,
    async (page, { newId, newIds = {}, frequency }) => {
      const ofWheel = await ofTheWheel(page, newIds)
      // Nothing is filled in: how it was programmed is said by whoever did it.
      await tap(button(page, /^A new ID/))
      await type(page, ofWheel ?? newId)
      await tap(button(page, /^Next/))
      await tap(button(page, new RegExp(`^${frequency} MHz`)))
    },
  ],
  [/^Take the wheel off/, (page) => hold(page, /wheel is off/)],
  [
    /^Let the air off/,
    async (page) => {
      await tap(button(page, 'Done', true))
      // Undo names the step and its wheel.
      await button(page, /^Undo (LF|RF|RR|LR|SP) · Let the air off/).waitFor()
    },
  ],
  [
    /^Look inside/,
    async (page) => {
      await tap(button(page, 'Sound'))
      await tap(button(page, 'None', true))
    },
  ],
  [
    /^(Find where the air goes|Say what closes the leak|Renew the stem parts)/,
    async (page) => {
      await read(page)
      await page.getByLabel('What was found or used').fill('as seen')
      await tap(button(page, 'Done: record'))
    },
  ],
  [
    /^Old sensor out/,
    async (page, { kit }) => {
      await read(page)
      await tap(button(page, /^Ends in/))
      await tap(button(page, kit))
      await tap(button(page, /^At \d+/))
    },
  ],
  [
    /^(Read the sensor before|Torque the new valve core|Fill to|Balance)/,
    async (page) => {
      await tap(button(page, /(answers, no pressure|lbf·in \(|^filled to|^0 oz left)/))
    },
  ],
  [
    /^Check stem, core/,
    async (page) => {
      await tap(button(page, /^None: it is tight/))
    },
  ],
  [
    /^Wheel on/,
    async (page, { comesFrom = {} }) => {
      const from = await ofTheWheel(page, comesFrom)
      await tap(button(page, /^Right and clean/))
      await tap(button(page, /^By hand/))
      await tap(from === undefined ? button(page, /the same place/) : button(page, from, true).last())
    },
  ],
  [
    /^See that the tires allow/,
    async (page) => {
      await tap(button(page, 'I have seen it: go on'))
      await tap(button(page, 'No tire has one'))
      await tap(button(page, /^As the sheet/))
    },
  ],
  [/^Take the spare/, (page) => tap(button(page, 'as the sheet says'))],
  [/^(Round at|Once more)/, (page) => hold(page, /hold to seal/)],
  [/^Second person checks/, (page) => secondPerson(page)],
  [
    /^Set the pressure/,
    async (page) => {
      if (await button(page, /^(Still as on arrival|Same as)/).count())
        await tap(button(page, /^(Still as on arrival|Same as)/))
      else {
        await tap(button(page, /^Cold/))
        await type(page, '27')
        await tap(button(page, /^Next/))
      }
      const target = (await page.locator('.step-figure .figure-value').first().textContent()) ?? ''
      await type(page, Number(target).toFixed(1))
    },
  ],
  [
    /^Tell the vehicle/,
    async (page) => {
      await read(page)
      // A sheet with a procedure says the method already.
      if (await button(page, /^By reset/).count()) await tap(button(page, /^By reset/))
      await tap(button(page, /^Has learned/))
    },
  ],
  [
    /learn/,
    async (page, { learns = ['LF', 'RF', 'RR', 'LR'] }) => {
      await read(page)
      if (await button(page, /^Standing/).count()) await tap(button(page, /^Standing/))
      for (const wheel of learns) await tap(button(page, wheel, true).last())
      await tap(button(page, /^Next/))
      await tap(button(page, /^Has learned/))
    },
  ],
  [
    /^Read the sensor again/,
    async (page, { closingSensor }) => {
      await tap(button(page, /^Answers, (as programmed|same as stored)/))
      if (await button(page, /^55 °F/).count()) await tap(button(page, /^55 °F/))
      else {
        await type(page, '55')
        await tap(button(page, /^Next/))
      }
      await type(page, closingSensor)
    },
  ],
  [
    /^Compare/,
    async (page) => {
      await tap(button(page, /^Can be read/))
      await tap(button(page, /^All as expected/))
      await tap(button(page, 'No codes'))
    },
  ],
  [
    /^Proof drive/,
    async (page, { odometerOut, odometerIn, minutes, by = ines }) => {
      await type(page, odometerOut)
      await tap(button(page, 'Leave: start the clock'))
      await button(page, 'Back: stop the clock').waitFor()
      await page.clock.fastForward(Number(minutes) * 60_000 + 10_000)
      // Nobody touched the tablet for so long: it has locked itself.
      await unlock(page, by)
      await tap(button(page, 'Back: stop the clock'))
      await type(page, odometerIn)
      await tap(button(page, /^Next/))
      await tap(button(page, 'Off', true))
      await tap(button(page, /^Lights and goes/))
    },
  ],
  [
    /^See the light/,
    async (page) => {
      // The lamp check was made at the end of the drive.
      expect(await button(page, /^Lights at key-on/).count()).toBe(0)
      await tap(button(page, /^Off/))
    },
  ],
]

/** What is said of the wheel that the heading names. */
const ofTheWheel = async (
  page: Page,
  said: Readonly<Record<string, string>>,
): Promise<string | undefined> => {
  const title = (await heading(page).textContent()) ?? ''
  return Object.entries(said).find(([wheel]) => title.includes(wheel))?.[1]
}

/** Long words have the screen for themselves first. */
const read = async (page: Page): Promise<void> => {
  if (await button(page, 'I have read it: go on').count()) await tap(button(page, 'I have read it: go on'))
}

/**
 * Ines, who torqued, is told that another person goes round. Greta holds the seal down on the tablet of Ines and types
 * her own PIN; Ines stays signed in, and is not among those who may.
 */
const secondPerson = async (page: Page): Promise<void> => {
  await page.getByText(/You torqued this wheel: another person goes round/).waitFor()
  await hold(page, /hold to seal/)
  await button(page, greta.name, true).waitFor()
  expect(await button(page, ines.name, true).count()).toBe(0)
  await tap(button(page, greta.name, true))
  await type(page, greta.pin)
}

/**
 * Closes one step after the other until the screen shows `until`; gives the headings in order. By default the bay has
 * nothing left to do then.
 */
export const workThrough = async (
  page: Page,
  figures: WorkFigures,
  until = /^Nothing for the bay now$/,
): Promise<string[]> => {
  const done: string[] = []
  for (;;) {
    await heading(page).waitFor()
    const title = (await heading(page).textContent()) ?? ''
    if (until.test(title)) return done
    if (done.length > 120) throw new Error(`no end of it: ${done.join(' | ')}`)
    const doing =
      doings.find(([words]) => words.test(title))?.[1] ?? ((at: Page) => tap(button(at, 'Done', true)))
    await doing(page, figures)
    done.push(title)
    await leaves(page, title).catch(async () => {
      throw new Error(`stuck at "${title}": ${await page.locator('body').textContent()}`)
    })
  }
}
