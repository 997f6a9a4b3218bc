import { openClient } from '@bayledger/db/client'
import { openPool } from '@bayledger/db/pool'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import { buildApp } from '../../../apps/api/src/app.ts'
import { noCarriers } from '../../../apps/api/src/carriers/carrier.ts'
import { startLiveHub } from '../../../apps/api/src/http/live.ts'
import { passingSealingKey } from '../../../apps/api/src/sealing-key.ts'
import { noStamping } from '../../../apps/api/src/stamping/stamping.ts'
import { ownDigestPlaces } from '../../support/digest-places.ts'
import { noBackups } from '../../support/no-backups.ts'
import { alwaysSealsWith } from '../../support/seals-with.ts'

/** The service as a process of its own, to be killed. Takes the database's address, prints its own. */
const [url = ''] = process.argv.slice(2)
const pool = openPool({ url, onIdleError: () => undefined })
const prisma = openClient(pool)
const signing = await createSigningIdentity({
  commonName: 'Test',
  notBefore: new Date().toISOString(),
  days: 1,
})
const app = await buildApp({
  parts: {
    prisma,
    pool,
    clock: { now: () => new Date() },
    tls: false,
    publicAddress: 'http://localhost',
    signing: alwaysSealsWith(signing),
    sealing: await passingSealingKey(),
    live: await startLiveHub(url, () => undefined),
    carriers: noCarriers,
    stamping: noStamping,
    backups: () => noBackups,
    loading: new Set(),
    digestPlaces: ownDigestPlaces(),
  },
  logger: false,
  webFolder: null,
  callsPerMinute: 1_000_000,
  checksEveryReply: false,
})
console.log(await app.listen({ port: 0, host: '127.0.0.1' }))
