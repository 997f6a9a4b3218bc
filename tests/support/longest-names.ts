import { withClient } from '@bayledger/db/with-client'

/** Renames the demo's customer of this name with what they brought, and every place: as long as names get, in one word. */
export const giveLongestNames = (
  { url }: { readonly url: string },
  was: string,
  { customer, vehicle, address }: Readonly<Record<'customer' | 'vehicle' | 'address', string>>,
): Promise<void> =>
  withClient(url, async (database) => {
    await database.query(
      `with known as (update customers set name = $1, language = 'es' where name = $2 returning id)
       update vehicles set description = $3 where customer_id = (select id from known)`,
      [customer, was, vehicle],
    )
    await database.query('update locations set address = $1', [address])
  })
