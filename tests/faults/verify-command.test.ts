import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { isAlive, readLockFile } from '@bayledger/db/embedded/lock-file'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { alter } from '../support/alter.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type ProofBench, startProofBench } from '../support/proof-bench.ts'
import { makeClosedFolder, startEmbeddedProcess } from './support/embedded-process.ts'

/** `npm run -s ledger:verify` itself: what it prints and how it ends. */
let bench: ProofBench
let orderId: string
beforeAll(async () => {
  bench = await startProofBench()
  const order = freshCopy(bench.shop.demo, 'T-2603')
  orderId = order.orderId
  await bench.replay.sendUntil(order.lines)
})
afterAll(() => bench.stop())

const verify = async (environment: NodeJS.ProcessEnv) => {
  const { DATABASE_URL: _, DATABASE_OWNER_URL: __, ...inherited } = process.env
  const child = spawn(process.execPath, ['apps/api/src/commands/verify-ledger.ts'], {
    env: { ...inherited, ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let out = ''
  let said = ''
  child.stdout.on('data', (text) => {
    out += text
  })
  child.stderr.on('data', (text) => {
    said += text
  })
  const [status] = (await once(child, 'close')) as [number | null]
  return { status, lines: out.trimEnd().split('\n'), said }
}
const here = () => ({
  DATABASE_URL: bench.shop.url,
  DATABASE_OWNER_URL: bench.shop.ownerUrl,
  DATA_FOLDER: bench.folder,
})

describe('the command that verifies', () => {
  it('counts what it read and what no digest covers, and ends with status 0', async () => {
    const { entries } = await bench.verified()
    const { status, lines, said } = await verify(here())
    expect({ status, lines }, said).toEqual({
      status: 0,
      lines: [
        'photos 2, not received yet 2',
        `${entries} entries are not covered by a digest yet`,
        `orders 1, entries ${entries}, reports 0, days 0, broken 0`,
      ],
    })
    expect(said).toContain('1 of 1 orders')
  })

  it('names what is broken first, counts it last, and ends with status 1', async () => {
    const { entries } = await bench.verified()
    await alter(
      bench.shop,
      `update entries set written_at = written_at + interval '1 hour' where order_id = $1 and seq = 5`,
      [orderId],
    )
    const { status, lines } = await verify(here())
    expect(status).toBe(1)
    expect(lines[0]).toMatch(/^Order T-\d+, entry 5 \(.*\): entry 5 was changed after it was written$/)
    expect(lines.at(-1)).toBe(`orders 1, entries ${entries}, reports 0, days 0, broken 1`)
  })

  it('says where there is no shop, and ends with status 2', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'bayledger-no-shop-'))
    const { status, said } = await verify({ DATA_FOLDER: folder })
    rmSync(folder, { recursive: true })
    expect(status).toBe(2)
    expect(said).toBe(
      `There is no shop in ${folder}. Set DATA_FOLDER to the folder of the service, or DATABASE_URL. Nothing was changed.\n`,
    )
  })

  it("starts the shop's own PostgreSQL where none runs, names a database that was never migrated, and ends PostgreSQL", async () => {
    const folder = makeClosedFolder()
    try {
      const first = await startEmbeddedProcess(folder.data)
      await first.stop()
      const { status, said } = await verify({ DATA_FOLDER: folder.data })
      expect(status).toBe(2)
      expect(said).toContain('The database was made by an older version than this program.')
      const left = readLockFile(join(folder.data, 'postgres'))
      expect(left !== undefined && isAlive(left.pid)).toBe(false)
    } finally {
      await folder.clear()
    }
  })
})
