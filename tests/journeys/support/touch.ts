import type { CDPSession, Locator, Page } from 'playwright-core'

type Point = { readonly x: number; readonly y: number }

/** A hand on a tablet's screen: real touch events in the browser, never a mouse. */
export type Hand = {
  /** A finger comes down and leaves again on the same spot. */
  readonly tap: (target: Locator) => Promise<void>
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
      await hand.down(await centerOf(target))
      // A person's finger stays on the glass for a moment; shorter touches are taken for rain.
      await target.page().waitForTimeout(fingerMilliseconds)
      await hand.up()
    },
    touches: () => touches,
  }
  return hand
}

const fingerMilliseconds = 75

/** Where a finger goes for a control: its middle, in view. */
export const centerOf = async (target: Locator): Promise<Point> => {
  await target.waitFor()
  await target.scrollIntoViewIfNeeded()
  const box = await target.boundingBox()
  if (box === null) throw new Error(`nothing to touch: ${target}`)
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
}

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
