import { freePort } from '@bayledger/db/embedded/postmaster'
import { readConfig } from '../../apps/api/src/config.ts'
import { startService } from '../../apps/api/src/main.ts'
import type { MailServer } from './mail-server.ts'
import type { RunningService } from './start-service.ts'

/**
 * The service on built faces, a database (one address for each role) and the data folder that belongs to it, in this very process:
 * what a worker runs one after the other loads and compiles it once. `seed` `none`: an empty database gets no demo.
 * `mail`: the server that takes its letters.
 */
export const startServiceHere = async (
  database: { readonly ownerUrl: string; readonly serviceUrl: string },
  data: string,
  seed: 'demo-day' | 'none' = 'demo-day',
  mail: Pick<MailServer, 'url'> | null = null,
): Promise<RunningService> => {
  const config = readConfig({
    DATABASE_URL: database.serviceUrl,
    DATABASE_OWNER_URL: database.ownerUrl,
    DATA_FOLDER: data,
    SHOP_SEED: seed,
    PORT: String(await freePort()),
    ...(mail === null ? {} : { SMTP_URL: mail.url, MAIL_FROM: 'desk@tamber.example' }),
  })
  const { address, stop } = await startService(config, () => undefined)
  return { address, stop }
}
