import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { outsideTool } from './outside-tools.ts'

/** The three faces as they are used: a desk screen, a tablet under a finger, a phone under a thumb. */
export const faces = {
  desk: { viewport: { width: 1280, height: 800 } },
  bay: { viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true },
  customer: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
} as const
export type Face = keyof typeof faces

/**
 * Background requests of the browser's own would be refused here by the hundred, and its own pages cost each start a second:
 * they are switched off. What playwright-core switches off is named again, as the last list is the one that counts.
 */
export const browserFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  `--disable-features=${[
    'WebUIOmniboxPopup',
    'WebUIOmniboxAimPopup',
    'AimEnabled',
    'AvoidUnnecessaryBeforeUnloadCheckSync',
    'DestroyProfileOnBrowserClose',
    'HttpsUpgrades',
    'HttpsFirstBalancedModeAutoEnable',
    'MediaRouter',
    'NetworkTimeServiceQuerying',
    'OptimizationHints',
    'PaintHolding',
    'PreconnectToSearch',
    'SpareRendererForSitePerProcess',
    'ThirdPartyStoragePartitioning',
  ].join(',')}`,
]

/** How long a page waits for what is to come: a busy machine is slow, and what never comes is known a little later. */
export const patienceMilliseconds = 60_000

export type TestBrowser = {
  /** A page of its own session on one face. Whatever it logs as an error is kept in `noise`. */
  readonly open: (face: Face, path: string) => Promise<Page>
  readonly noise: readonly string[]
  /** Saves pictures of all open pages into a folder, to look into a failure. */
  readonly picture: (folder: string) => Promise<void>
  readonly close: () => Promise<void>
}

/**
 * Gives the devices of a context a clock that a test may let run forward. What they hear of the server's clock runs
 * forward with it, as it would: both clocks are then apart by what they were apart before.
 */
export const runClocksTogether = async (context: BrowserContext, minutesBehind: number): Promise<void> => {
  const behind = minutesBehind * 60_000
  await context.clock.install({ time: Date.now() - behind })
  // The server refuses a time that a tablet signed by a clock that ran forward. So the tablet waits for the server, which may
  // need more than two seconds on a busy machine, and does not sign a person in by itself.
  await context.addInitScript(() => {
    AbortSignal.timeout = () => new AbortController().signal
  })
  await context.route('**/api/devices/current', async (route) => {
    // The network is gone, or the whole browser is: the tablet hears nothing, as it would.
    const nothing = () => null
    const [response, ofTheDay] = await Promise.all([
      route.fetch().catch(nothing),
      route
        .request()
        .frame()
        .evaluate(() => Date.now())
        .catch(nothing),
    ])
    if (response === null || ofTheDay === null) return route.abort().catch(nothing)
    const now = new Date(ofTheDay + behind).toISOString()
    const json = response.ok() ? { ...(await response.json()), now } : undefined
    await route.fulfill(json === undefined ? { response } : { response, json }).catch(nothing)
  })
}

/**
 * A real Chromium against a running server. `minutesBehind`: how slow the clocks of its devices are, so that a test may
 * let them run forward as far, over a drive, and they are never ahead of the server's; `null`: they run by themselves. It
 * is launched with its first page.
 */
export const startBrowser = (address: string, minutesBehind: number | null = null): TestBrowser => {
  const profile = mkdtempSync(join(tmpdir(), 'bayledger-chromium-'))
  let launched: Promise<Browser> | null = null
  const launch = () => {
    launched ??= chromium.launch({
      executablePath: outsideTool('chromium'),
      args: browserFlags,
      env: { ...process.env, HOME: profile },
    })
    return launched
  }
  const contexts = new Map<Face, BrowserContext>()
  const noise: string[] = []
  const contextOf = async (face: Face): Promise<BrowserContext> => {
    const known = contexts.get(face)
    if (known) return known
    const made = await (await launch()).newContext({
      ...faces[face],
      baseURL: address,
      locale: 'en-US',
      timezoneId: 'America/New_York',
      acceptDownloads: true,
    })
    if (minutesBehind !== null) await runClocksTogether(made, minutesBehind)
    made.setDefaultTimeout(patienceMilliseconds)
    contexts.set(face, made)
    return made
  }
  return {
    noise,
    picture: async (folder) => {
      for (const [face, context] of contexts)
        for (const [index, page] of context.pages().entries())
          await page.screenshot({ path: join(folder, `${face}-${index + 1}.png`) })
    },
    open: async (face, path) => {
      const page = await (await contextOf(face)).newPage()
      page.on('pageerror', (error) => noise.push(`${face}: ${error.message}`))
      page.on('console', (message) => {
        if (message.type() === 'error') noise.push(`${face}: ${message.text()} ${message.location().url}`)
      })
      await page.goto(path)
      return page
    },
    close: async () => {
      await (await launched)?.close()
      rmSync(profile, { recursive: true, force: true })
    },
  }
}
