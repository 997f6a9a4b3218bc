import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll } from 'vitest'
import { startBrowser, type TestBrowser } from '../../support/browser.ts'
import {
  createTestDatabase,
  type Template,
  type TestDatabase,
  templateFolder,
} from '../../support/database.ts'
import { type RunningService, startService } from '../../support/start-service.ts'

/** The demo shop as the first start of the product loads it, with the data folder of that start. */
const demo: Template = {
  name: 'demo',
  beginsWith: 'empty',
  fill: async ({ url, serviceUrl }, folder) => {
    const service = await startService({ ownerUrl: url, serviceUrl }, folder)
    await service.stop()
  },
}

/**
 * The product with the demo shop on a database of its own, and a real browser before it, for one test file;
 * `minutesBehind`: how slow the clocks of its devices are, which the test then moves; `null`: they run by themselves.
 */
export const setStage = (minutesBehind: number | null = null): (() => TestBrowser) => {
  let database: TestDatabase | undefined
  let data: string | undefined
  let service: RunningService | undefined
  let browser: TestBrowser | undefined
  beforeAll(async () => {
    database = await createTestDatabase(demo)
    data = mkdtempSync(join(tmpdir(), 'bayledger-stage-'))
    cpSync(templateFolder(demo), data, { recursive: true })
    service = await startService({ ownerUrl: database.url, serviceUrl: database.serviceUrl }, data)
    browser = await startBrowser(service.address, minutesBehind)
  })
  afterAll(async () => {
    await browser?.close()
    await service?.stop()
    await database?.drop()
    if (data !== undefined) rmSync(data, { recursive: true })
  })
  return () => {
    if (browser === undefined) throw new Error('the browser is not there before the first test')
    return browser
  }
}
