import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { button, heading, ines, shows, type } from './support/bay.ts'
import { takeForArrival } from './support/begin.ts'
import { plate } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

const browser = setStage()

/** What reaches beyond the screen's side, or is cut off: a button whose words do not fit it. */
const faultsOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    // A page that is too wide makes a tablet zoom out: its own width is what counts, not that of the zoomed window.
    const width = document.documentElement.clientWidth
    const wide = document.documentElement.scrollWidth > width ? ['the page scrolls sideways'] : []
    const seen = [...document.querySelectorAll('button, a[href], h1')].filter(
      (one) => one.getBoundingClientRect().width > 0 && !one.classList.contains('plan-button'),
    )
    const cut = seen.flatMap((one) => {
      const { left, right, top, bottom } = one.getBoundingClientRect()
      // Half under the pad: its upper edge can be seen, its lower one cannot. A long list of rows scrolls by itself.
      const pad = document.querySelector('.bay-pad')?.getBoundingClientRect()
      const isUnderPad =
        pad !== undefined &&
        one.closest('.bay-step') !== null &&
        one.closest('.row-cells') === null &&
        top < pad.top - 1 &&
        bottom > pad.top + 1
      // Beside the drawing nothing may be scrolled out of reach either.
      const holder = [one.closest('.bay-vehicle'), one.closest('.bay-side')].find(
        (box) => box !== null && getComputedStyle(box).display !== 'contents',
      )
      const isClipped = holder != null && bottom > holder.getBoundingClientRect().bottom + 1
      const isOutside = left < -1 || right > width + 1
      const isCut = one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1
      return isOutside || isCut || isUnderPad || isClipped ? [`${one.textContent}`] : []
    })
    return [...wide, ...cut]
  })

/** The digits of the pad on the screen as an eye reads them: row by row, from the left. */
const digitsInOrder = (page: Page): Promise<string> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.pad-key')]
      .filter((key) => /^\d$/.test(key.textContent ?? ''))
      .map((key) => ({ digit: key.textContent ?? '', box: key.getBoundingClientRect() }))
      .sort((one, other) => one.box.top - other.box.top || one.box.left - other.box.left)
      .map(({ digit }) => digit)
      .join(''),
  )
const oneLayout = '1234567890'

/** Whether the heading of the step can be seen where the step is scrolled to its end. */
const headingStays = (page: Page): Promise<boolean> =>
  page.evaluate(() => {
    const step = document.querySelector('.bay-step')
    step?.scrollTo(0, step.scrollHeight)
    const { top, bottom } = document.querySelector('.bay-step h1')?.getBoundingClientRect() ?? {
      top: -1,
      bottom: -1,
    }
    const box = step?.getBoundingClientRect()
    return box !== undefined && top >= box.top - 1 && bottom <= box.bottom + 1
  })

describe('the bay in portrait', () => {
  let bay: Page
  beforeAll(async () => {
    bay = (await takeForArrival(browser())).bay
    await bay.setViewportSize({ width: 768, height: 1024 })
  })

  it('has no sideways scrolling, whole buttons and a heading that stays, on each kind of pad', async () => {
    onTestFailed(() => browser().picture('out'))
    const look = async () => {
      const title = (await heading(bay).textContent()) ?? ''
      expect(await faultsOf(bay), title).toEqual([])
      expect(await headingStays(bay), title).toBe(true)
    }
    await look()
    await tap(button(bay, /^Light/))
    await shows(bay, 'Watch the warning light')
    await look()
    await tap(button(bay, /^Stored IDs/))
    await look()
    await tap(button(bay, /^Can be read/))
    await tap(button(bay, 'One by one'))
    await tap(button(bay, /^With letters/))
    await look()
    expect(await digitsInOrder(bay), 'the pad of an ID').toBe(oneLayout)
    await tap(button(bay, /^right rear/i))
    await tap(button(bay, /GA-1/))
    await look()
    expect(await digitsInOrder(bay), 'the pad of a gauge').toBe(oneLayout)
    await tap(button(bay, 'Sensor', true))
    await shows(bay, /^Ask the right rear/)
    await look()
    await tap(button(bay, /^Answers/).first())
    await look()
    await tap(button(bay, 'Tire', true))
    await look()
    await tap(button(bay, 'Size, date code, more'))
    await look()
  })

  it('keeps what is half typed when the screen is turned', async () => {
    await tap(button(bay, /^left front/i))
    await type(bay, '31')
    await bay.setViewportSize({ width: 1024, height: 768 })
    expect(await bay.locator('.pad-entry').inputValue()).toBe('31')
    await bay.setViewportSize({ width: 768, height: 1024 })
    await type(bay, '.6')
    await shows(bay, 'Gauge the right front tire')
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
    for (const size of [
      { width: 1024, height: 768 },
      { width: 768, height: 1024 },
    ]) {
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
    expect(await digitsInOrder(bay), 'the pad of a PIN').toBe(oneLayout)
    expect(await bay.locator('.bay-locked .loud-band').textContent()).toMatch(/is OFF/)
    expect(await bay.locator('.bay-locked .lock-vehicle').textContent()).toContain('BRF 3952')
  })
})
