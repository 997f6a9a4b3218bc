import type { Entry } from '@bayledger/ledger/entry'
import { projection } from './projection.ts'

/** What an entry takes off a shelf: the parts of a draw, and the kit that a sensor was fitted with. */
const takenBy = (entry: Entry): { readonly partNumber: string; readonly quantity: number } | null =>
  entry.kind === 'part.drawn'
    ? entry.payload
    : entry.kind === 'sensor.fitted'
      ? { partNumber: entry.payload.kitPart, quantity: 1 }
      : null

/** Parts taken and, where their entry was struck, put back: a movement for each entry, and the stock on hand. */
export const stockMovementRows = projection({
  name: 'part',
  columns: { entry_id: 'uuid', location_id: 'uuid', part_number: 'text', quantity: 'int' },
  rowsOf: ({ entries, entryById, head }) =>
    entries.flatMap((entry) => {
      const from = entry.kind === 'entry.struck' ? entryById(entry.payload.entryId) : entry
      const taken = from === undefined ? null : takenBy(from)
      if (taken === null) return []
      return [
        {
          entry_id: entry.id,
          location_id: head.locationId,
          part_number: taken.partNumber,
          quantity: entry === from ? -taken.quantity : taken.quantity,
        },
      ]
    }),
  sql: (from) => `part as (
    insert into stock_movements (shop_id, entry_id, line, stock_item_id, quantity, kind)
    select p.shop_id, p.entry_id, 0, s.id, p.quantity, case when p.quantity < 0 then 'drawn' else 'withdrawn' end
    from ${from} p join stock_items s using (shop_id, location_id, part_number)
  ), taken as (
    update stock_items s set on_hand = s.on_hand + moved.quantity
    from (select shop_id, location_id, part_number, sum(quantity)::int as quantity from ${from}
      group by shop_id, location_id, part_number order by location_id, part_number) moved
    where s.shop_id = moved.shop_id and s.location_id = moved.location_id and s.part_number = moved.part_number
  )`,
  rebuild: 'never',
})
