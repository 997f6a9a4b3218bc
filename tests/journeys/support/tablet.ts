import { execFileSync } from 'node:child_process'
import { globSync, mkdtempSync, readFileSync, readlinkSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium, type Page } from 'playwright-core'
import { browserFlags, faces, patienceMilliseconds, runClocksTogether } from '../../support/browser.ts'
import { outsideTool } from '../../support/outside-tools.ts'

/** A tablet that can lose its power: what it keeps lies in a folder that outlives its browser. */
export type Tablet = {
  readonly start: () => Promise<Page>
  /** Shuts down in peace. */
  readonly shutDown: () => Promise<void>
  /** Ends the browser at once, as an empty battery does: nothing is confirmed, nothing is cleaned up. */
  readonly cutPower: () => Promise<void>
  readonly throwAway: () => Promise<void>
  /** Everything that its browser keeps of pages' databases on the disk, byte for byte. */
  readonly disk: () => Buffer
}

/**
 * A tablet in the bay of the service at `address`. `minutesBehind`: how slow its clock is, so that a test may let it run
 * forward; `null`: it runs by itself.
 */
export const makeTablet = (address: string, minutesBehind: number | null = null): Tablet => {
  const folder = mkdtempSync(join(tmpdir(), 'bayledger-tablet-'))
  let context: BrowserContext | null = null
  return {
    start: async () => {
      context = await chromium.launchPersistentContext(folder, {
        executablePath: outsideTool('chromium'),
        args: [...browserFlags],
        env: { ...process.env, HOME: folder },
        baseURL: address,
        locale: 'en-US',
        timezoneId: 'America/New_York',
        ...faces.bay,
      })
      context.setDefaultTimeout(patienceMilliseconds)
      if (minutesBehind !== null) await runClocksTogether(context, minutesBehind)
      return context.pages()[0] ?? context.newPage()
    },
    shutDown: async () => context?.close(),
    cutPower: async () => {
      const closed = context?.waitForEvent('close')
      execFileSync('kill', ['-9', browserProcess(folder)])
      await closed
    },
    disk: () => {
      const files = globSync('**/IndexedDB/**/*', { cwd: folder, withFileTypes: true }).filter((file) =>
        file.isFile(),
      )
      return Buffer.concat(files.map(({ parentPath, name }) => readFileSync(join(parentPath, name))))
    },
    throwAway: async () => {
      await context?.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/** The browser writes host and process id into a link of its folder. */
const browserProcess = (folder: string): string => {
  const id = /-(\d+)$/.exec(readlinkSync(join(folder, 'SingletonLock')))?.[1]
  if (id === undefined) throw new Error(`no browser runs on ${folder}`)
  return id
}
