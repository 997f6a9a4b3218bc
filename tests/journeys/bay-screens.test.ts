import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { button, greta, heading, ines, shows, type, unlock } from './support/bay.ts'
import { openBay, takeForArrival, writeArrival } from './support/begin.ts'
import { smallKeys } from './support/key-sizes.ts'
import { faultsOf } from './support/screen-faults.ts'
import { plate } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

/** The clocks of the devices are moved by the test: a lock comes when it says so. */
const browser = setStage(0, writeArrival)

const sizes = [
  { width: 1024, height: 768 },
  { width: 1280, height: 800 },
  { width: 800, height: 1280 },
] as const
/** Upright the drawing is above the pad: a long list of answers, and the pad of an ID, have smaller keys there. */
const [upright, narrow] = [
  { width: 768, height: 1024 },
  { width: 600, height: 960 },
] as const

let bay: Page
beforeAll(async () => {
  bay = await openBay(browser())
  await takeForArrival(bay)
})

/** The digits of the pad on the screen as an eye reads them: row by row, from the left. */
const digitsInOrder = (): Promise<string> =>
  bay.evaluate(() =>
    [...document.querySelectorAll('.pad-key')]
      .filter((key) => /^\d$/.test(key.textContent ?? ''))
      .map((key) => ({ digit: key.textContent ?? '', box: key.getBoundingClientRect() }))
      .sort((one, other) => one.box.top - other.box.top || one.box.left - other.box.left)
      .map(({ digit }) => digit)
      .join(''),
  )
const oneLayout = '1234567890'

/** Whether the heading of the step can be seen where the step is scrolled to its end. */
const headingStays = (): Promise<boolean> =>
  bay.evaluate(() => {
    const step = document.querySelector('.bay-step')
    step?.scrollTo(0, step.scrollHeight)
    const { top, bottom } = document.querySelector('.bay-step h1')?.getBoundingClientRect() ?? {
      top: -1,
      bottom: -1,
    }
    const box = step?.getBoundingClientRect()
    return box !== undefined && top >= box.top - 1 && bottom <= box.bottom + 1
  })

/** Upright on a small tablet nothing is cut off, nothing scrolls sideways, and the heading stays. */
const lookUpright = async (): Promise<void> => {
  const title = (await heading(bay).textContent()) ?? ''
  await bay.setViewportSize(upright)
  expect(await faultsOf(bay), `${title}, upright`).toEqual([])
  expect(await headingStays(), `${title}, upright`).toBe(true)
}

/** What a glove needs of a gauge's pad, upright too: keys of 96 pixels, and 16 between. */
const keepsToGloves = async (): Promise<void> => {
  await bay.setViewportSize(upright)
  const [seven, eight] = [
    await button(bay, '7', true).boundingBox(),
    await button(bay, '8', true).boundingBox(),
  ]
  expect(Math.min(seven?.height ?? 0, seven?.width ?? 0)).toBeGreaterThanOrEqual(96)
  expect((eight?.x ?? 0) - (seven?.x ?? 0) - (seven?.width ?? 0)).toBeGreaterThanOrEqual(16)
  await bay.setViewportSize(sizes[0])
}

/** On each size of tablet, in each hand: nothing is cut off, and a gloved finger finds every key. */
const look = async (): Promise<void> => {
  const title = (await heading(bay).textContent()) ?? ''
  for (const size of sizes) {
    await bay.setViewportSize(size)
    expect(await smallKeys(bay), `${title}, ${size.width} wide`).toEqual([])
    expect(await faultsOf(bay), `${title}, ${size.width} wide`).toEqual([])
  }
  await lookUpright()
  await bay.setViewportSize(narrow)
  expect(
    (await faultsOf(bay)).filter((fault) => fault.includes('sideways')),
    `${title}, ${narrow.width} wide`,
  ).toEqual([])
  await bay.setViewportSize(sizes[0])
}

/** A vehicle that is left and opened again shows its first open task. */
const backToTheFirst = async () => {
  await tap(bay.getByRole('link', { name: 'My vehicles' }))
  await shows(bay, 'My vehicles')
  await bay.goBack()
  await shows(bay, 'Note the temperatures')
}

const useHand = async (name: 'For the left hand' | 'For the right hand') => {
  const address = bay.url()
  await tap(bay.getByRole('link', { name: 'My vehicles' }))
  await tap(button(bay, name))
  await bay.goto(address)
}

/** Which side of the step the drawing is on. */
const drawingSide = (): Promise<string> =>
  bay.evaluate(() => {
    const drawing = document.querySelector('.bay-side')?.getBoundingClientRect()
    const work = document.querySelector('.bay-work')?.getBoundingClientRect()
    return drawing && work && drawing.left < work.left ? 'left' : 'right'
  })

describe.each(['right', 'left'] as const)('a tablet for the %s hand', (hand) => {
  beforeAll(async () => {
    if (hand === 'left') await useHand('For the left hand')
    await shows(bay, 'Note the temperatures')
  })

  it('has the drawing on the other side, after a reload too', async () => {
    expect(await drawingSide()).toBe(hand === 'right' ? 'left' : 'right')
  })

  it('fits every size of screen, and keys of 96 pixels stand 16 apart', async () => {
    onTestFailed(() => browser().picture('out'))
    expect(await bay.evaluate(() => matchMedia('(pointer: coarse)').matches)).toBe(true)
    await look()
    await tap(button(bay, /^Light/))
    await shows(bay, 'Watch the warning light')
    await look()
    if (hand === 'right') {
      await tap(button(bay, /^Stored IDs/))
      await lookUpright()
      await tap(button(bay, /^Can be read/))
      await tap(button(bay, 'One by one'))
      await tap(button(bay, /^With letters/))
      await lookUpright()
      expect(await digitsInOrder(), 'the pad of an ID').toBe(oneLayout)
    }
    await tap(button(bay, /^right rear/i))
    if (hand === 'right') await tap(button(bay, /GA-1/))
    await shows(bay, /^Gauge the right rear/)
    await look()
    expect(await digitsInOrder(), 'the pad of a gauge').toBe(oneLayout)
    await keepsToGloves()
    await tap(button(bay, 'Sensor', true))
    await shows(bay, /^Ask the right rear/)
    await look()
    if (hand === 'right') {
      await tap(button(bay, /^Answers/).first())
      await lookUpright()
    }
    await tap(button(bay, 'Tire', true))
    await look()
    if (hand === 'right') {
      await tap(button(bay, 'Size, date code, more'))
      await lookUpright()
      await bay.setViewportSize(sizes[0])
    }
    await backToTheFirst()
  })
})

it('keeps what is half typed when the screen is turned', async () => {
  await tap(button(bay, /^left front/i))
  await bay.setViewportSize(upright)
  await type(bay, '31')
  await bay.setViewportSize(sizes[0])
  expect(await bay.locator('.pad-entry').inputValue()).toBe('31')
  await bay.setViewportSize(upright)
  await type(bay, '.6')
  await shows(bay, 'Gauge the right front tire')
  await bay.setViewportSize(sizes[0])
  await backToTheFirst()
})

describe('the lock', () => {
  it('comes after 90 s without a touch, and keeps the half-filled step behind it', async () => {
    onTestFailed(() => browser().picture('out'))
    await type(bay, '27')
    // The clock runs on between the two, and on a busy machine for a while.
    await bay.clock.fastForward(75_000)
    expect(await bay.locator('.bay-locked').count()).toBe(0)
    await bay.clock.fastForward(16_000)
    await bay.locator('.bay-locked').waitFor()
    for (const size of sizes) {
      await bay.setViewportSize(size)
      expect(await smallKeys(bay), `PIN, ${size.width} wide`).toEqual([])
      expect(await faultsOf(bay), `PIN, ${size.width} wide`).toEqual([])
    }
    await bay.setViewportSize(sizes[0])
    await unlock(bay, ines)
    await shows(bay, 'Note the temperatures')
    expect(await bay.locator('.pad-entry').inputValue()).toBe('27')
  })

  it('lets another person take over in eight touches: the name below, their own, six digits', async () => {
    await bay.evaluate(() => {
      document.documentElement.dataset.touches = '0'
      addEventListener(
        'pointerdown',
        () => {
          const { dataset } = document.documentElement
          dataset.touches = String(Number(dataset.touches) + 1)
        },
        true,
      )
    })
    await tap(button(bay, /Change person/))
    await tap(bay.locator('.bay-locked').getByRole('button', { name: greta.name }))
    await type(bay, greta.pin)
    await button(bay, new RegExp(`Signed in: ${greta.name}`)).waitFor()
    expect(await bay.evaluate(() => document.documentElement.dataset.touches)).toBe('8')
    expect(await bay.locator('.pad-entry').inputValue()).toBe('27')
  })

  it('shows the vehicle on the lock too, and the wheel that is off', async () => {
    await tap(button(bay, /Change person/))
    await bay.locator('.lock-vehicle').getByText(plate).waitFor()
    await tap(button(bay, 'Back to the work'))
    await tap(button(bay, /^Bright look|^Dark look/))
    await bay.goto('/bay')
    await shows(bay, /vehicles/)
    await tap(bay.getByRole('link', { name: /S\. Achterberg/ }))
    await bay.locator('.loud-band').first().waitFor()
    for (const size of [sizes[0], upright]) {
      await bay.setViewportSize(size)
      expect(await faultsOf(bay), `${size.width} wide, under the band`).toEqual([])
    }
    await tap(button(bay, /Change person/))
    await bay
      .locator('.bay-locked .loud-band')
      .getByText(/is OFF/)
      .waitFor()
    await tap(bay.locator('.bay-locked').getByRole('button', { name: ines.name }))
    await bay.locator('.bay-locked .pin-dots').waitFor()
    expect(await digitsInOrder(), 'the pad of a PIN').toBe(oneLayout)
    expect(await bay.locator('.bay-locked .loud-band').textContent()).toMatch(/is OFF/)
    expect(await bay.locator('.bay-locked .lock-vehicle').textContent()).toContain('BRF 3952')
  })
})
