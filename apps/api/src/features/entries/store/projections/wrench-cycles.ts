import { projection } from './projection.ts'

/** Clicks of wrenches, counted once for each entry and added to the wrench. */
export const wrenchCycleRows = projection({
  name: 'cycle',
  columns: { entry_id: 'uuid', instrument_id: 'uuid', clicks: 'int' },
  rowsOf: ({ entries }) =>
    entries.flatMap((entry) =>
      (entry.kind === 'studs.torqued' || entry.kind === 'torque.checked') && entry.payload.clicked > 0
        ? [
            {
              entry_id: entry.id,
              instrument_id: entry.payload.wrench.instrumentId,
              clicks: entry.payload.clicked,
            },
          ]
        : [],
    ),
  sql: (from) => `cycle as (
    insert into wrench_cycles (shop_id, entry_id, line, instrument_id, clicks)
    select shop_id, entry_id, 0, instrument_id, clicks from ${from}
  ), worn as (
    update instruments i set cycles = i.cycles + used.clicks
    from (select shop_id, instrument_id, sum(clicks)::int as clicks from ${from}
      group by shop_id, instrument_id order by instrument_id) used
    where i.shop_id = used.shop_id and i.id = used.instrument_id
  )`,
  rebuild: 'never',
})
