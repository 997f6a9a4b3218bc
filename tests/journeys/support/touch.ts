import { setTimeout as pause } from 'node:timers/promises'
import type { CDPSession, Locator, Page } from 'playwright-core'

type Point = { readonly x: number; readonly y: number }

/** A hand on a tablet's screen: real touch events in the browser, never a mouse. */
export type Hand = {
  /** A finger comes down and leaves again on the same spot. */
  readonly tap: (target: Locator) => Promise<void>
  /** Two taps a tenth of a second apart, on the same spot. */
  readonly doubleTap: (target: Locator) => Promise<void>
  readonly down: (at: Point, finger?: number) => Promise<void>
  readonly move: (at: Point, finger?: number) => Promise<void>
  readonly up: (finger?: number) => Promise<void>
  /** How often a finger came down so far: each tap, each key, each hold. */
  readonly touches: () => number
}

const hands = new WeakMap<Page, Promise<Hand>>()

/** The one hand of a page. */
export const handOf = (page: Page): Promise<Hand> => {
  const known = hands.get(page)
  if (known) return known
  const made = page.context().newCDPSession(page).then(makeHand)
  hands.set(page, made)
  return made
}

const makeHand = (session: CDPSession): Hand => {
  const fingers = new Map<number, Point>()
  let touches = 0
  const send = (type: 'touchStart' | 'touchMove') =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: [...fingers].map(([id, point]) => ({ id, ...point })),
    })
  /**
   * Whole taps at one spot, a moment apart. All of it is sent at once with the instants of a person's finger, so that a busy
   * machine makes neither the taps nor the pause between them longer, and no picture is drawn under the finger.
   */
  const tapAt = async (at: Point, times: number): Promise<void> => {
    touches += times
    const events = Array.from({ length: times }, () => ['touchStart', 'touchEnd'] as const).flat()
    const began = Date.now() - (events.length - 1) * fingerMilliseconds
    await Promise.all(
      events.map((type, index) =>
        session.send('Input.dispatchTouchEvent', {
          type,
          touchPoints: type === 'touchStart' ? [{ id: 1, ...at }] : [],
          timestamp: (began + index * fingerMilliseconds) / 1000,
        }),
      ),
    )
  }
  const hand: Hand = {
    down: async (at, finger = 1) => {
      touches += 1
      fingers.set(finger, at)
      await send('touchStart')
    },
    move: async (at, finger = 1) => {
      fingers.set(finger, at)
      await send('touchMove')
    },
    up: async (finger = 1) => {
      const left = fingers.get(finger)
      fingers.delete(finger)
      // While others stay, the browser is told which finger leaves; the last one needs no name.
      const touchPoints = fingers.size > 0 && left ? [{ id: finger, ...left }] : []
      await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints })
    },
    tap: async (target) => {
      await pause(fingerMilliseconds)
      const { at, clockIsMoved } = await placeOf(target)
      if (!clockIsMoved) return tapAt(at, 1)
      await hand.down(at)
      await pause(fingerMilliseconds)
      await hand.up()
    },
    doubleTap: async (target) => {
      // Both taps are over when they are sent: they must not begin before what was done last had ended.
      await pause(3 * fingerMilliseconds)
      await tapAt(await centerOf(target), 2)
    },
    touches: () => touches,
  }
  return hand
}

/** A person's finger stays on the glass for a moment; shorter touches are taken for rain. */
const fingerMilliseconds = 75

/**
 * Where a finger goes for a control: its middle, once it is in view and at rest. Something that covers it is given a moment to
 * go away.
 */
export const centerOf = async (target: Locator): Promise<Point> => (await placeOf(target)).at

const placeOf = async (target: Locator): Promise<{ readonly at: Point; readonly clockIsMoved: boolean }> => {
  const until = Date.now() + lookMilliseconds
  while (Date.now() < until) {
    const place = await target.evaluate(lookUp, framesOfALook).catch(passOverNavigation)
    if (place !== null) return place
  }
  throw new Error(`nothing to touch: ${target}`)
}

const lookMilliseconds = 60_000
const framesOfALook = 20

/** The page went elsewhere during the look: it is looked at again. */
const passOverNavigation = (error: unknown): null => {
  if (error instanceof Error && /context was destroyed|navigat|not attached/i.test(error.message)) return null
  throw error
}

/** Runs in the page. `null`: after so many frames it was not seen; it may be another element by now. */
const lookUp = (element: Element, longest: number): Promise<{ at: Point; clockIsMoved: boolean } | null> =>
  new Promise((resolve) => {
    let last = ''
    let looks = 0
    // Chromium's own: scrolls only what is out of sight, and no further than to the middle.
    const scrolled = element as Element & { readonly scrollIntoViewIfNeeded: () => void }
    scrolled.scrollIntoViewIfNeeded()
    const look = () => {
      looks += 1
      if (looks > longest || !element.isConnected) return resolve(null)
      const { x, y, width, height } = element.getBoundingClientRect()
      const at = { x: x + width / 2, y: y + height / 2 }
      const met = document.elementFromPoint(at.x, at.y)
      const isSeen = width > 0 && height > 0 && element.checkVisibility({ visibilityProperty: true })
      const isFree = isSeen && met !== null && element.contains(met)
      const place = `${at.x} ${at.y}`
      if (place === last && (isFree || (isSeen && looks === longest)))
        return resolve({ at, clockIsMoved: '__pwClock' in globalThis })
      last = place
      requestAnimationFrame(look)
    }
    look()
  })

export const tap = async (target: Locator): Promise<void> => (await handOf(target.page())).tap(target)

/** Presses and holds until the button has taken it; the finger leaves only then. */
export const touchAndHold = async (target: Locator): Promise<void> => {
  const page = target.page()
  const hand = await handOf(page)
  await hand.down(await centerOf(target))
  await page.locator('.hold-pressed').waitFor()
  await page.locator('.hold-pressed').waitFor({ state: 'detached' })
  await hand.up()
  // Nothing reacts for a moment after a hold; a person waits as long without knowing it.
  await page.waitForTimeout(restMilliseconds)
}

const restMilliseconds = 320

/** One session a page: each keeps its own slowness until it is set otherwise. */
const networks = new WeakMap<Page, CDPSession>()

/** Makes every answer of the server come so much later, as behind a lifted truck; 0 takes it back. */
export const slowNetwork = async (page: Page, milliseconds: number): Promise<void> => {
  const session = networks.get(page) ?? (await page.context().newCDPSession(page))
  networks.set(page, session)
  await session.send('Network.enable')
  await session.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: milliseconds,
    downloadThroughput: -1,
    uploadThroughput: -1,
  })
}
