import { openClient } from '@bayledger/db/client'
import { openPool } from '@bayledger/db/pool'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import { smtpCarrier } from '../../../apps/api/src/carriers/smtp-carrier.ts'
import { startLiveHub } from '../../../apps/api/src/http/live.ts'
import { messageKeeper } from '../../../apps/api/src/message-keeper.ts'
import { passingSealingKey } from '../../../apps/api/src/sealing-key.ts'
import { noStamping } from '../../../apps/api/src/stamping/stamping.ts'
import { ownDigestPlaces } from '../../support/digest-places.ts'
import { noBackups } from '../../support/no-backups.ts'
import { alwaysSealsWith } from '../../support/seals-with.ts'

/** One round of the outbox in a process of its own, to be killed. Takes the database's address, the mail server's, and the time. */
const [url = '', mail = '', now = ''] = process.argv.slice(2)
const pool = openPool({ url, onIdleError: () => undefined })
const signing = await createSigningIdentity({ commonName: 'Test', notBefore: now, days: 1 })
await messageKeeper(
  {
    prisma: openClient(pool),
    pool,
    clock: { now: () => new Date(now) },
    tls: false,
    publicAddress: 'http://localhost:4310',
    signing: alwaysSealsWith(signing),
    sealing: await passingSealingKey(),
    live: await startLiveHub(url, () => undefined),
    carriers: { email: smtpCarrier({ url: mail, from: 'desk@tamber.example' }), text: null },
    stamping: noStamping,
    backups: () => noBackups,
    loading: new Set(),
    digestPlaces: ownDigestPlaces(),
  },
  (words, error) => console.error(words, error),
).deliver()
process.exit()
