import { withClient } from '@bayledger/db/with-client'

/** Makes every proof of who is signed in eleven minutes older. */
export const ageProofs = (serviceUrl: string): Promise<unknown> =>
  withClient(serviceUrl, (client) =>
    client.query("update sessions set proven_at = proven_at - interval '11 minutes'"),
  )
