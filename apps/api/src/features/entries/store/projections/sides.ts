import type { SideKind } from '@bayledger/ledger/side-kinds'
import { sideTables } from '../side-tables.ts'
import { type Projection, projection } from './projection.ts'

/** The sides of one kind that came with entries; one that is stored already stays as it is. */
const sideRows = (side: SideKind): Projection =>
  projection({
    name: side,
    columns: { digest: 'text', salt: 'text', text: 'text', created_at: 'timestamptz' },
    rowsOf: ({ sides, entries }) =>
      sides
        .filter((one) => one.side === side)
        .map(({ digest, salt, text }) => ({
          digest,
          salt: Buffer.from(salt).toString('hex'),
          text,
          created_at: entries.at(-1)?.receivedAt ?? null,
        })),
    sql: (from) => `${side} as (
      insert into ${sideTables[side]} (shop_id, digest, order_id, salt, text, created_at)
      select shop_id, digest, order_id, decode(salt, 'hex'), text, created_at from ${from}
      on conflict do nothing
    )`,
    rebuild: 'never',
  })

/** A projection for each kind of side. */
export const allSideRows: readonly Projection[] = (Object.keys(sideTables) as SideKind[]).map(sideRows)
