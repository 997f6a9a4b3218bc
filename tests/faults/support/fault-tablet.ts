import type { SentEntry } from '@bayledger/contract/entries'
import type { Page } from 'playwright-core'
import { enroll, type Person } from '../../journeys/support/bay.ts'
import { makeTablet } from '../../journeys/support/tablet.ts'
import type { Network } from './network.ts'
import { type QuickHand, quickHandOf } from './quick-hand.ts'
import type { Found } from './taps.ts'

/** What waits in a tablet's own store, and what it was told is refused. */
export type TabletStore = { readonly waiting: number; readonly refused: readonly Found[] }

/** A tablet under one person's hand, behind a network of its own. */
export type FaultTablet = {
  readonly person: Person & { readonly id: string }
  readonly network: Network
  readonly hand: () => QuickHand
  /** Lets the person in again where the tablet has locked itself, as it does after 90 s without a touch. */
  readonly unlock: () => Promise<void>
  /** Loads the page anew and lets the person in again. */
  readonly reload: () => Promise<void>
  /** The page dies at once; the browser lives on and opens another. */
  readonly crash: () => Promise<void>
  /** The whole browser dies at once, as with an empty battery, and is started again. */
  readonly cutPower: () => Promise<void>
  /** The browser's own network goes and comes back, and every open connection with it. */
  readonly findNetworkAgain: () => Promise<void>
  /** The entries of each order as this page holds them. */
  readonly held: () => Promise<ReadonlyMap<string, readonly SentEntry[]>>
  readonly store: () => Promise<TabletStore>
  readonly throwAway: () => Promise<void>
}

/**
 * A new tablet, enrolled by this code, on which the person has signed in. `touches` as in `quickHandOf`: they must last where a
 * test moves the page's clock, which then counts when an event is heard and not when it was.
 */
export const enrollTablet = async (
  network: Network,
  person: FaultTablet['person'],
  code: string,
  touches: { readonly lasts: boolean } = { lasts: false },
): Promise<FaultTablet> => {
  const tablet = makeTablet(network.address)
  let hand = await quickHandOf(await tablet.start(), touches)
  await hand.page.goto('/bay/enroll')
  await enroll(hand.page, code)
  await hand.press(person.name, 10_000)
  // A browser writes its cookies down every half minute; this one has been enrolled for longer than that.
  await tablet.shutDown()
  const open = async (page: Page) => {
    hand = await quickHandOf(page, touches)
    await page.goto('/bay')
    await letIn(hand, person)
  }
  await open(await tablet.start())
  return {
    person,
    network,
    hand: () => hand,
    unlock: async () => {
      if (await hand.isShown('.pin-sign-in')) await letIn(hand, person)
    },
    reload: () => open(hand.page),
    crash: async () => {
      const { page } = hand
      const context = page.context()
      const died = page.waitForEvent('crash')
      const session = await context.newCDPSession(page)
      // It never answers: the page is gone.
      session.send('Page.crash').catch(() => undefined)
      await died
      const next = await context.newPage()
      await page.close()
      await open(next)
    },
    cutPower: async () => {
      await tablet.cutPower()
      await open(await tablet.start())
    },
    findNetworkAgain: async () => {
      const context = hand.page.context()
      await context.setOffline(true)
      network.reconnect()
      await context.setOffline(false)
    },
    held: async () => new Map(await hand.page.evaluate(heldInPage)),
    store: () => hand.page.evaluate(storeInPage),
    throwAway: tablet.throwAway,
  }
}

/** The server may be down just now, and takes a while to be back. */
const letInWithin = 120_000

/** Signs in where the tablet asks who is there. */
const letIn = async (hand: QuickHand, { name, pin }: Person): Promise<void> => {
  for (const end = performance.now() + letInWithin; performance.now() < end; ) {
    if (await hand.comes('.my-vehicles, .plan-button', 1_000)) return
    await hand.press('Try again', 0)
    if ((await hand.title()) !== name) await hand.press(name, 1_000)
    if ((await hand.title()) === name) await hand.type(pin)
  }
  throw new Error(`${name} does not get in: ${await hand.title()}`)
}

/** Runs in the page. Finds the page's store of server replies where React keeps it, and gives the orders in it. */
const heldInPage = (): [string, SentEntry[]][] => {
  type Query = { queryKey: readonly unknown[]; state: { data?: { entries?: SentEntry[] } } }
  type Client = { getQueryCache: () => { getAll: () => Query[] } }
  type Fiber = {
    readonly memoizedProps: { readonly client?: Client } | null
    readonly child: Fiber | null
    readonly sibling: Fiber | null
  }
  const clientBelow = (fiber: Fiber | null): Client | null =>
    fiber === null
      ? null
      : fiber.memoizedProps?.client !== undefined && 'getQueryCache' in fiber.memoizedProps.client
        ? fiber.memoizedProps.client
        : (clientBelow(fiber.child) ?? clientBelow(fiber.sibling))
  const root = document.getElementById('root')
  const at = Object.entries(root ?? {}).find(([key]) => key.startsWith('__reactContainer$'))
  const queries = clientBelow((at?.[1]?.stateNode.current as Fiber) ?? null)
    ?.getQueryCache()
    .getAll()
  if (queries === undefined) throw new Error('the page holds no replies of the server')
  return queries.flatMap(({ queryKey, state }) =>
    queryKey.length === 2 && queryKey[0] === 'orders' && state.data?.entries !== undefined
      ? [[String(queryKey[1]), state.data.entries] as [string, SentEntry[]]]
      : [],
  )
}

/** Runs in the page. Reads the tablet's own database. */
const storeInPage = async (): Promise<TabletStore> => {
  type Row = {
    refused: unknown
    /** Absent where it is kept sealed: then only the tablet itself reads it. */
    parcel?: { staffId: string; entries: readonly Omit<Found, 'writtenBy'>[] }
  }
  const opened = await new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open('bayledger.bay')
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
  const rows = await new Promise<Row[]>((resolve, reject) => {
    const request = opened.transaction('parcels').objectStore('parcels').getAll()
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
  opened.close()
  return {
    waiting: rows.filter(({ refused }) => refused === null).length,
    refused: rows.flatMap(({ refused, parcel }) =>
      refused === null || parcel === undefined
        ? []
        : parcel.entries.map((entry) => ({
            ...entry,
            writtenBy: { kind: 'staff' as const, staffId: parcel.staffId },
          })),
    ),
  }
}
