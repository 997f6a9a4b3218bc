import type { Locator, Page } from 'playwright-core'
import { operators } from './hand-seconds.ts'

/** A signature is drawn in so many strokes and so many centimeters. */
const signature = { strokes: 6, centimeters: 12 } as const

/** A hand on a keyboard, or a thumb on a phone, whose seconds are counted by the keystroke-level model. */
export type KeyHand = {
  /** A thought before a unit of work. */
  readonly think: () => void
  readonly type: (text: string) => Promise<void>
  /** One key, or several that are held together, as Shift+Enter. */
  readonly press: (keys: string) => Promise<void>
  /** Tab after Tab, and the arrows within a choice, until this has the focus. */
  readonly reach: (control: Locator) => Promise<void>
  /** Reaches a radio button or a checkbox and chooses it. */
  readonly choose: (control: Locator) => Promise<void>
  /** Reaches a button or a link and presses it. */
  readonly go: (control: Locator) => Promise<void>
  /** The hand goes to a target on the screen and touches it. */
  readonly touch: (control: Locator) => Promise<void>
  /** Draws a signature into this pad. */
  readonly sign: (pad: Locator) => Promise<void>
  /** What the hand waits for to come or to go; the time until then counts as measured. */
  readonly await: (what: Locator, until?: 'visible' | 'detached') => Promise<void>
  readonly seconds: () => number
}

/** So many Tabs reach anything on a page of ours. */
const mostTabs = 150

export const keyHandOf = (page: Page): KeyHand => {
  let seconds = 0
  const press = async (keys: string): Promise<void> => {
    await page.keyboard.press(keys)
    seconds += keys.split('+').length * operators.key
  }
  const reach = async (control: Locator): Promise<void> => {
    for (let keys = 0; keys < mostTabs; keys += 1) {
      const at = await control.evaluate((wanted) => {
        const focused = document.activeElement
        const isBeside =
          wanted instanceof HTMLInputElement &&
          focused instanceof HTMLInputElement &&
          focused.type === 'radio' &&
          focused.name === wanted.name
        return focused === wanted ? 'there' : isBeside ? 'beside' : 'elsewhere'
      })
      if (at === 'there') return
      await press(at === 'beside' ? 'ArrowDown' : 'Tab')
    }
    throw new Error(`no Tab reaches ${control}`)
  }
  const touch = async (control: Locator): Promise<void> => {
    await control.tap()
    seconds += operators.point + operators.key
  }
  return {
    think: () => {
      seconds += operators.think
    },
    type: async (text) => {
      await page.keyboard.type(text)
      seconds += text.length * operators.key
    },
    press,
    reach,
    choose: async (control) => {
      await reach(control)
      if (!(await control.isChecked())) await press('Space')
    },
    go: async (control) => {
      await reach(control)
      await press('Enter')
    },
    touch,
    sign: async (pad) => {
      await pad.scrollIntoViewIfNeeded()
      const box = await pad.boundingBox()
      if (box === null) throw new Error('there is no field to sign in')
      await page.mouse.move(box.x + 30, box.y + box.height / 2)
      await page.mouse.down()
      for (let step = 1; step <= 12; step += 1)
        await page.mouse.move(box.x + 30 + step * 15, box.y + box.height / 2 + (step % 2 === 0 ? 14 : -14))
      await page.mouse.up()
      seconds +=
        operators.point +
        signature.strokes * operators.stroke +
        signature.centimeters * operators.centimeterDrawn
    },
    await: async (what, until = 'visible') => {
      const begun = performance.now()
      await what.first().waitFor({ state: until })
      seconds += (performance.now() - begun) / 1_000
    },
    seconds: () => seconds,
  }
}
