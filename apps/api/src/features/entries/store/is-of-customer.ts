import type { Pool } from 'pg'

/** Whether a vehicle is a customer's, each under whichever of its records; `null`: one of the two is not on file. */
export const isOfCustomer = async (
  pool: Pool,
  shopId: string,
  { vehicleId, customerId }: { readonly vehicleId: string; readonly customerId: string },
): Promise<boolean | null> => {
  const { rows } = await pool.query<{ is: boolean | null }>({
    name: 'is-of-customer',
    text: `select bool_or(v.customer_id = any (array(select same_customer($1, $3)))) as is
      from vehicles v where v.shop_id = $1 and v.id = any (array(select same_vehicle($1, $2)))
        and exists (select from customers c where c.shop_id = $1 and c.id = $3)`,
    values: [shopId, vehicleId, customerId],
  })
  return rows[0]?.is ?? null
}
