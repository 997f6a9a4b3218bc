import { projection } from './projection.ts'

/** Parts drawn and, where the draw was struck, put back: a movement for each entry, and the stock on hand. */
export const stockMovementRows = projection({
  name: 'part',
  columns: { entry_id: 'uuid', location_id: 'uuid', part_number: 'text', quantity: 'int' },
  rowsOf: ({ entries, entryById, head }) =>
    entries.flatMap((entry) => {
      const drawn = entry.kind === 'entry.struck' ? entryById(entry.payload.entryId) : entry
      return drawn?.kind === 'part.drawn'
        ? [
            {
              entry_id: entry.id,
              location_id: head.locationId,
              part_number: drawn.payload.partNumber,
              quantity: entry === drawn ? -drawn.payload.quantity : drawn.payload.quantity,
            },
          ]
        : []
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
