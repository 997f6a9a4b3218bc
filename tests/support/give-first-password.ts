import { withClient } from '@bayledger/db/with-client'

/** A person's password counts as one that somebody else gave, and that is taken until tomorrow. */
export const giveFirstPassword = (serviceUrl: string, signInName: string): Promise<unknown> =>
  withClient(serviceUrl, (client) =>
    client.query("update staff set first_password_until = now() + interval '1 day' where sign_in_name = $1", [
      signInName,
    ]),
  )
