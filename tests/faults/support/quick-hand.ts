import { setTimeout as wait } from 'node:timers/promises'
import type { CDPSession, Page } from 'playwright-core'

/**
 * A hand that knows the screens by heart: it finds a control by its name as soon as that is there and can be touched, and
 * touches it for as short a time as counts. Hundreds of rounds need it; journeys use the slower one of `touch.ts`.
 */
export type QuickHand = {
  readonly page: Page
  /** Presses the first button or link of this name in view; false where none came up in time. */
  readonly press: (name: string | RegExp, milliseconds?: number) => Promise<boolean>
  /** Presses what this CSS selector finds first. */
  readonly pressAt: (selector: string, milliseconds?: number) => Promise<boolean>
  /** Presses the keys of the pad, one after the other. */
  readonly type: (figure: string) => Promise<boolean>
  /** The heading of the screen; empty where there is none. */
  readonly title: () => Promise<string>
  /** Waits until the heading is like this; false where it was not in time. */
  readonly titled: (like: RegExp, milliseconds?: number) => Promise<boolean>
  readonly isShown: (selector: string) => Promise<boolean>
  /** Waits until the selector finds something in view; false where it did not in time. */
  readonly comes: (selector: string, milliseconds?: number) => Promise<boolean>
}

type Wanted = { readonly selector: string; readonly name: string | null; readonly pattern: string | null }
type Point = { readonly x: number; readonly y: number }

/** A shorter touch is taken for rain (60 ms, `apps/web/src/ui/hold-steps.ts`). */
const fingerMilliseconds = 66
const lookAgainMilliseconds = 25
const usualMilliseconds = 15_000

/**
 * `lasts`: whether a touch takes as long by the clock as the browser is told. Where nothing is measured, all of it is sent at
 * once, with the instants of a finger.
 */
export const quickHandOf = async (
  page: Page,
  { lasts }: { readonly lasts: boolean } = { lasts: false },
): Promise<QuickHand> => {
  const session = await page.context().newCDPSession(page)
  const pressWanted = async (wanted: Wanted, milliseconds = usualMilliseconds): Promise<boolean> => {
    const at = await find(page, wanted, milliseconds)
    if (at === null) return false
    await (lasts ? touchAndLift : touch)(session, at)
    return true
  }
  const comes = async (selector: string, milliseconds = usualMilliseconds) =>
    (await find(page, { selector, name: null, pattern: null }, milliseconds)) !== null
  return {
    page,
    press: (name, milliseconds) =>
      pressWanted(
        {
          selector: 'button, a',
          name: typeof name === 'string' ? name : null,
          pattern: typeof name === 'string' ? null : name.source,
        },
        milliseconds,
      ),
    pressAt: (selector, milliseconds) => pressWanted({ selector, name: null, pattern: null }, milliseconds),
    type: async (figure) => {
      for (const key of figure)
        if (
          !(await pressWanted(
            { selector: 'button', name: key === '.' ? 'point' : key, pattern: null },
            1_000,
          ))
        )
          return false
      return true
    },
    title: () => page.evaluate(titleInPage),
    titled: async (like, milliseconds = usualMilliseconds) =>
      (await find(page, { selector: 'h1', name: null, pattern: like.source }, milliseconds)) !== null,
    isShown: (selector) => comes(selector, 0),
    comes,
  }
}

const touch = async (session: CDPSession, at: Point): Promise<void> => {
  const lifted = Date.now()
  await Promise.all([
    session.send('Input.dispatchTouchEvent', {
      type: 'touchStart',
      touchPoints: [{ id: 1, ...at }],
      timestamp: (lifted - fingerMilliseconds) / 1_000,
    }),
    session.send('Input.dispatchTouchEvent', {
      type: 'touchEnd',
      touchPoints: [],
      timestamp: lifted / 1_000,
    }),
  ])
}

const touchAndLift = async (session: CDPSession, at: Point): Promise<void> => {
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ id: 1, ...at }] })
  await wait(fingerMilliseconds)
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
}

/** The page itself looks again and again, which takes a fraction of what asking it takes; a page that was loaded anew is asked again. */
const find = async (page: Page, wanted: Wanted, milliseconds: number): Promise<Point | null> => {
  for (const end = performance.now() + milliseconds; ; await wait(lookAgainMilliseconds)) {
    const left = Math.max(0, end - performance.now())
    const found = await page
      .evaluate(findInPage, { ...wanted, left, lookAgain: lookAgainMilliseconds })
      .catch((problem: unknown) => {
        if (left === 0 || !String(problem).includes('context was destroyed')) throw problem
        return null
      })
    if (found !== null || performance.now() >= end) return found
  }
}

type Looking = Wanted & { readonly left: number; readonly lookAgain: number }

/** Runs in the page. The middle of what is wanted, where a finger would reach it and it would react; `left` milliseconds at most. */
const findInPage = async ({ selector, name, pattern, left, lookAgain }: Looking): Promise<Point | null> => {
  const nameOf = (element: Element) =>
    (element.getAttribute('aria-label') ?? element.textContent ?? '').replaceAll(/\s+/g, ' ').trim()
  const isWanted = (element: Element) =>
    (name === null || nameOf(element) === name) &&
    (pattern === null || new RegExp(pattern).test(nameOf(element))) &&
    element.closest('[inert], [aria-disabled="true"], [aria-busy="true"]') === null
  const look = (): Point | null => {
    for (const element of document.querySelectorAll(selector)) {
      if (!isWanted(element)) continue
      element.scrollIntoView({ block: 'nearest', inline: 'nearest' })
      const box = element.getBoundingClientRect()
      const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
      const hit = document.elementFromPoint(at.x, at.y)
      if (hit !== null && (element.contains(hit) || hit.contains(element))) return at
    }
    return null
  }
  for (const end = performance.now() + left; ; ) {
    const at = look()
    if (at !== null || performance.now() >= end) return at
    await new Promise((resolve) => setTimeout(resolve, lookAgain))
  }
}

const titleInPage = (): string => document.querySelector('h1')?.textContent ?? ''
