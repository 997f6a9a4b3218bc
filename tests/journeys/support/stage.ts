import { afterAll, beforeAll } from 'vitest'
import { startBrowser, type TestBrowser } from '../../support/browser.ts'
import { createTestDatabase, type TestDatabase } from '../../support/database.ts'
import { type RunningService, startService } from '../../support/start-service.ts'

/**
 * The product with the demo shop on a database of its own, and a real browser before it, for one test file;
 * `minutesBehind`: how slow the clocks of its devices are, which the test then moves; `null`: they run by themselves.
 * `prepare` changes the database once the demo is in it.
 */
export const setStage = (
  minutesBehind: number | null = null,
  prepare: (database: TestDatabase) => Promise<void> = async () => undefined,
): (() => TestBrowser) => {
  let database: TestDatabase | undefined
  let service: RunningService | undefined
  let browser: TestBrowser | undefined
  beforeAll(async () => {
    database = await createTestDatabase('empty')
    service = await startService({ ownerUrl: database.url, serviceUrl: database.serviceUrl })
    await prepare(database)
    browser = await startBrowser(service.address, minutesBehind)
  })
  afterAll(async () => {
    await browser?.close()
    await service?.stop()
    await database?.drop()
  })
  return () => {
    if (browser === undefined) throw new Error('the browser is not there before the first test')
    return browser
  }
}
