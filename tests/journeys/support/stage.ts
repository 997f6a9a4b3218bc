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
import { addFreeVehicles } from '../../support/free-vehicles.ts'
import type { MailServer } from '../../support/mail-server.ts'
import { startServiceHere } from '../../support/service-here.ts'
import { type RunningService, startService } from '../../support/start-service.ts'
import { callDesk, type DeskCalls } from './desk-calls.ts'

const addresses = ({ url, serviceUrl }: TestDatabase) => ({ ownerUrl: url, serviceUrl })

/**
 * What `npm start` makes on its first start: the faces, and the demo shop in a database and a data folder; and vehicles on file that
 * are not in the shop today.
 */
const firstStart: Template = {
  name: 'first_start',
  beginsWith: 'empty',
  fill: async (database, folder) => {
    await (await startService(addresses(database), folder)).stop()
    await addFreeVehicles(database)
  },
}

/** What a journey plays on: a browser before the running service, and its desk without a screen. */
export type Stage = TestBrowser & { readonly address: string; readonly desk: DeskCalls }

/**
 * The product with the demo shop on a database of its own, and a real browser before it, for one test file;
 * `minutesBehind`: how slow the clocks of its devices are, which the test then moves; `null`: they run by themselves.
 * `prepare` changes the database once the demo is in it. `mail`: where its letters go; absent: nowhere.
 */
export const setStage = (
  minutesBehind: number | null = null,
  prepare: (database: TestDatabase) => Promise<unknown> = async () => undefined,
  mail: MailServer | null = null,
): (() => Stage) => {
  const data = mkdtempSync(join(tmpdir(), 'bayledger-stage-'))
  let database: TestDatabase | undefined
  let service: RunningService | undefined
  let stage: Stage | undefined
  beforeAll(async () => {
    database = await createTestDatabase(firstStart)
    cpSync(templateFolder(firstStart), data, { recursive: true })
    await mail?.start()
    service = await startServiceHere(addresses(database), data, 'demo-day', mail)
    await prepare(database)
    const { address } = service
    stage = { ...startBrowser(address, minutesBehind), address, desk: callDesk(address) }
  })
  afterAll(async () => {
    await stage?.close()
    await service?.stop()
    await mail?.stop()
    await database?.drop()
    rmSync(data, { recursive: true, force: true })
  })
  return () => {
    if (stage === undefined) throw new Error('the stage is not there before the first test')
    return stage
  }
}
