import type { Page } from 'playwright-core'
import { tabTo } from './accessible.ts'
import { tap } from './touch.ts'

/** How an owner works at a screen of the desk: by keys alone, or by a finger on a tablet's glass. */
export type OwnerHand = {
  readonly page: Page
  /** Types into the field of this label, in place of what is there. */
  readonly type: (label: string, text: string) => Promise<void>
  /** `day` as 2026-01-12. */
  readonly day: (label: string, day: string) => Promise<void>
  /** Presses the first button, link or choice that says these words. */
  readonly press: (words: string) => Promise<void>
}

/** Chromium’s field for a day loses its place if its digits come faster than pictures are drawn. */
const keyMilliseconds = 60

export const byKeyboard = (page: Page): OwnerHand => ({
  page,
  type: async (label, text) => {
    await tabTo(page, label)
    await page.keyboard.press('ControlOrMeta+a')
    await page.keyboard.type(text)
  },
  day: async (label, day) => {
    await tabTo(page, label)
    const [year, month, date] = day.split('-')
    await page.keyboard.type(`${month}${date}${year}`, { delay: keyMilliseconds })
  },
  press: async (words) => {
    await tabTo(page, words)
    await page.keyboard.press('Enter')
  },
})

/** What the tablet's own keyboard types is put into the field that was touched. */
export const byTouch = (page: Page): OwnerHand => ({
  page,
  type: async (label, text) => {
    const field = page.getByLabel(label, { exact: true })
    await tap(field)
    await field.selectText()
    await page.keyboard.insertText(text)
  },
  day: (label, day) => page.getByLabel(label, { exact: true }).fill(day),
  press: (words) => tap(page.locator('button, a, .choice').filter({ hasText: words }).first()),
})
