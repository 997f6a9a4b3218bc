import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { button, greta, heading, hold, ines, leaves, signIn, type } from './bay.ts'

/** What the technician types while working; every one of these must be on the report. */
type WorkFigures = {
  readonly partNumber: string
  readonly newId: string
  readonly frequency: string
  readonly kit: string
  readonly odometerOut: string
  readonly odometerIn: string
  readonly minutes: string
  readonly closingSensor: string
}

export const workFigures: WorkFigures = {
  partNumber: 'CL-315-A',
  newId: '5D00AA01',
  frequency: '315',
  kit: 'KIT-CL-7',
  odometerOut: '50001',
  odometerIn: '50015',
  minutes: '23',
  closingSensor: '32.8',
}

type Doing = (page: Page, figures: WorkFigures) => Promise<void>

/** One entry for each kind of step: how its screen is filled, by the words of its heading. */
const doings: readonly (readonly [RegExp, Doing])[] = [
  [/^Which torque wrench/, (page) => button(page, /W-07/).click()],
  [/^Which gauge/, (page) => button(page, /GA-1/).click()],
  [
    /^Draw the sensor/,
    async (page, { partNumber, frequency }) => {
      await page.getByRole('textbox', { name: 'Part number' }).fill(partNumber)
      await button(page, /^Next/).click()
      await type(page, frequency)
      await button(page, /^Next/).click()
      await button(page, /^Metal/).click()
      await button(page, 'Record the part').click()
    },
  ],
  [
    /^Program/,
    async (page, { newId, frequency }) => {
      if (await button(page, /^A new ID/).count()) await button(page, /^A new ID/).click()
      await page.getByRole('textbox', { name: 'ID read back' }).fill(newId)
      await button(page, /^Next/).click()
      await type(page, frequency)
      await button(page, /^Read back in hand/).click()
    },
  ],
  [/^Take the wheel off/, (page) => hold(page, /wheel is off/)],
  [
    /^Look inside/,
    async (page) => {
      await button(page, 'Sound').click()
      await button(page, 'None', true).click()
      await button(page, 'Record the inside').click()
    },
  ],
  [
    /^Old sensor out/,
    async (page, { kit }) => {
      await read(page)
      await button(page, /^Ends in/).click()
      await page.getByRole('textbox', { name: 'Kit part number' }).fill(kit)
      await button(page, /^Next/).click()
      await button(page, /^At \d+/).click()
      await button(page, 'Record the fitted sensor').click()
    },
  ],
  [
    /^(Read the sensor before|Torque the new valve core)/,
    async (page) => {
      await button(page, /(answers, no pressure|lbf·in \()/).click()
      await button(page, /^Done: record/).click()
    },
  ],
  [
    /^Check stem, core/,
    async (page) => {
      await button(page, /^None: it is tight/).click()
      await button(page, 'Record the leak check').click()
    },
  ],
  [
    /^Wheel on/,
    async (page) => {
      await button(page, /^Right and clean/).click()
      await button(page, /^By hand/).click()
      await button(page, /wheel is on: record/).click()
    },
  ],
  [/^(Round at|Once more)/, (page) => hold(page, /hold to seal/)],
  [/^Second person checks/, (page) => secondPerson(page)],
  [
    /^Set the pressure/,
    async (page) => {
      const target = (await page.locator('.step-figure .figure-value').first().textContent()) ?? ''
      await type(page, Number(target).toFixed(1))
      await button(page, 'Record as left').click()
    },
  ],
  [
    /learn/,
    async (page) => {
      await read(page)
      if (await button(page, /^Standing/).count()) await button(page, /^Standing/).click()
      for (const wheel of ['LF', 'RF', 'RR', 'LR']) await button(page, wheel, true).last().click()
      await button(page, /^Next/).click()
      await button(page, /^Has learned/).click()
      await button(page, 'Record the relearn').click()
    },
  ],
  [
    /^Read the sensor again/,
    async (page, { closingSensor }) => {
      await button(page, /^Answers/).click()
      await type(page, closingSensor)
      await button(page, /^Next/).click()
      await type(page, '55')
      await button(page, /^Next/).click()
      await page.locator('.hex-suggestions button').first().click()
      await button(page, 'Good').click()
      await button(page, /^Record/).click()
    },
  ],
  [
    /^Compare/,
    async (page) => {
      await button(page, /^Can be read/).click()
      await button(page, /^With letters/).click()
      for (let wheel = 0; wheel < 4; wheel += 1) await page.locator('.hex-suggestions button').first().click()
      await button(page, 'No codes').click()
      await button(page, 'Record what is stored').click()
    },
  ],
  [
    /^Proof drive/,
    async (page, { odometerOut, odometerIn, minutes }) => {
      for (const figure of [odometerOut, minutes, odometerIn]) {
        await type(page, figure)
        await button(page, /^Next/).click()
      }
      await button(page, 'Off', true).click()
      await button(page, /^Lights and goes/).click()
      await button(page, 'Record the drive').click()
    },
  ],
  [
    /^See the light/,
    async (page) => {
      await button(page, /^Lights at key-on/).click()
      await button(page, /^Off/).click()
      await button(page, 'Record the light').click()
    },
  ],
]

/** Long words have the screen for themselves first. */
const read = async (page: Page): Promise<void> => {
  if (await button(page, 'I have read it: go on').count()) await button(page, 'I have read it: go on').click()
}

/** Ines, who torqued, is offered no seal. Greta signs in on the same tablet, goes round, and gives it back to Ines. */
const secondPerson = async (page: Page): Promise<void> => {
  await page.getByText(/You torqued the .* wheel yourself/).waitFor()
  expect(await button(page, /hold to seal/).count()).toBe(0)
  await button(page, 'Second person: sign in').click()
  await signIn(page, greta)
  const title = (await heading(page).textContent()) ?? ''
  await hold(page, /hold to seal/)
  await leaves(page, title)
  await button(page, /Change person/).click()
  await signIn(page, ines)
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
    if (done.length > 60) throw new Error(`no end of it: ${done.join(' | ')}`)
    const doing =
      doings.find(([words]) => words.test(title))?.[1] ?? ((at: Page) => button(at, 'Done', true).click())
    await doing(page, figures)
    done.push(title)
    await leaves(page, title)
  }
}
