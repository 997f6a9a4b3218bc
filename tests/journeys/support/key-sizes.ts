import type { Page } from 'playwright-core'

/** What a gloved finger presses to record: keys, answers, the wide button. */
const pressed = '.pad-key, .row-option, .bay-pad .button-wide'

/** Keys that are smaller than 96 CSS pixels or nearer than 16 to the next one, by their words and what they measure. */
export const smallKeys = (page: Page): Promise<string[]> =>
  page.evaluate((selector) => {
    const keys = [...document.querySelectorAll(selector)]
      .map((one) => ({ words: one.textContent ?? '', box: one.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0)
    const small = keys
      .filter(({ box }) => box.width < 95.5 || box.height < 95.5)
      .map(({ words, box }) => `${words}: ${Math.round(box.width)} x ${Math.round(box.height)}`)
    const near = keys.flatMap((one, index) =>
      keys.slice(index + 1).flatMap((other) => {
        const across = Math.max(one.box.left - other.box.right, other.box.left - one.box.right)
        const down = Math.max(one.box.top - other.box.bottom, other.box.top - one.box.bottom)
        const gap = Math.max(across, down)
        return gap < 15.5 ? [`${one.words} and ${other.words}: ${Math.round(gap)} apart`] : []
      }),
    )
    return [...small, ...near]
  }, pressed)
