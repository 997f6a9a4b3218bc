import type { PartOnStock, WrenchFacts } from '@bayledger/ledger/admit/facts'
import type { Role } from '@bayledger/ledger/role'
import { type DiscountLimits, readPriceBook } from '@bayledger/reckoning/money/price-book'
import type { Pool } from 'pg'
import { WrenchBody } from '../../../core/instrument-body.ts'
import { partOnStock } from '../../../core/part-family.ts'

/** What admitting needs to know of a shop, whatever the entry: kept in memory as long as `version` is still the shop's. */
export type ShopFacts = {
  readonly version: number
  /** Active people with their roles. */
  readonly staff: ReadonlyMap<string, readonly Role[]>
  readonly gauges: ReadonlySet<string>
  readonly gaugesInQuarantine: ReadonlySet<string>
  /** Their clicks are as they were when this was read: appends count on without raising the version. */
  readonly wrenches: ReadonlyMap<string, WrenchFacts>
  readonly places: ReadonlyMap<string, PlaceFacts>
  readonly discountLimits: DiscountLimits
}

export type PlaceFacts = {
  /** The place's stock list, by part number. */
  readonly stock: ReadonlyMap<string, PartOnStock>
  readonly secondPersonRequired: boolean
}

type Row = {
  version: number
  staff: { id: string; roles: Role[] }[] | null
  instruments:
    | {
        id: string
        kind: string
        due_on: string | null
        cycles: number
        quarantined: boolean
        body: unknown
      }[]
    | null
  stock: { place: string; number: string; family: unknown }[] | null
  places: { id: string; second_person: boolean | null }[] | null
  prices: unknown
}

/** The facts and their version, as of one moment. @throws when there is no such shop. */
export const readShopFacts = async (pool: Pool, shopId: string): Promise<ShopFacts> => {
  const { rows } = await pool.query<Row>({
    name: 'shop-facts',
    text: `select facts_version as version,
      (select json_agg(json_build_object('id', id, 'roles', roles)) from staff where shop_id = $1 and active) as staff,
      (select json_agg(json_build_object('id', id, 'kind', kind, 'due_on', due_on, 'cycles', cycles,
        'quarantined', quarantined, 'body', body)) from instruments where shop_id = $1) as instruments,
      (select json_agg(json_build_object('place', location_id, 'number', part_number, 'family', family))
        from stock_items where shop_id = $1) as stock,
      (select json_agg(json_build_object('id', id,
        'second_person', (law_profile ->> 'secondPersonForTorque')::boolean)) from locations where shop_id = $1) as places,
      (select body from setting_versions where shop_id = $1 and kind = 'prices' and location_id is null
        order by version desc limit 1) as prices
      from shops where id = $1`,
    values: [shopId],
  })
  const [row] = rows
  if (!row) throw new Error(`there is no shop ${shopId}`)
  const instruments = row.instruments ?? []
  return {
    version: row.version,
    staff: new Map((row.staff ?? []).map(({ id, roles }) => [id, roles])),
    gauges: gaugesWith(instruments, false),
    gaugesInQuarantine: gaugesWith(instruments, true),
    wrenches: new Map(
      instruments
        .filter(({ kind }) => kind === 'wrench')
        // A wrench whose record cannot be read is not used: it is refused as unknown.
        .flatMap(({ id, due_on, cycles, quarantined, body }): [string, WrenchFacts][] => {
          const range = WrenchBody.safeParse(body)
          return range.success ? [[id, { dueOn: due_on ?? '', cycles, quarantined, ...range.data }]] : []
        }),
    ),
    // Without prices that can be read nothing is taken off.
    discountLimits: readPriceBook(row.prices)?.discountLimits ?? nothingOff,
    places: new Map(
      (row.places ?? []).map(({ id, second_person }) => [
        id,
        {
          stock: new Map(
            (row.stock ?? [])
              .filter(({ place }) => place === id)
              .map(({ number, family }): [string, PartOnStock] => [number, partOnStock(family)]),
          ),
          secondPersonRequired: second_person ?? true,
        },
      ]),
    ),
  }
}

const nothingOff: DiscountLimits = { advisor: 0, lead: 0, manager: 0, owner: 0 }

const gaugesWith = (
  instruments: readonly { readonly id: string; readonly kind: string; readonly quarantined: boolean }[],
  quarantined: boolean,
): ReadonlySet<string> =>
  new Set(
    instruments.filter((one) => one.kind === 'gauge' && one.quarantined === quarantined).map(({ id }) => id),
  )
