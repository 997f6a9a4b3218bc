import type { Pool } from 'pg'

/** The ids and figures of what is filled in come from a number and this seed, so that every run holds the same shop. */
const seed = 2601
const batch = 5_000
/** Of a hundred vehicles, so many were here before and have an ended order with four sensors. */
const seenOfHundred = 33

const syllables = [
  'bra',
  'kel',
  'mün',
  'dor',
  'vé',
  'lis',
  'tar',
  'øst',
  'hal',
  'wen',
  'cor',
  'pín',
  'sal',
  'ebr',
  'gim',
  'noth',
]
const makes = [
  'Kestwick',
  'Marlowe',
  'Corvane',
  'Ostrava',
  'Pellham',
  'Quillon',
  'Tarrow',
  'Venn',
  'Wexley',
  'Yarrick',
]
const models = [
  'Moor',
  'Tern',
  'Ridge',
  'Lark',
  'Harbor',
  'Sable',
  'Fen',
  'Crest',
  'Heron',
  'Dale',
  'Quarry',
  'Loam',
]

/** A whole number from 0 below `below`, the same for the same number and salt. */
const drawn = (salt: string, below: number) =>
  `(abs(hashint8extended(n, hashtextextended('${salt}', ${seed})) % ${below}))::int`
const id = (salt: string, number = 'n') =>
  `overlay(overlay(md5('${salt} ' || ${number}) placing '4' from 13) placing '8' from 17)::uuid`
const oneOf = (salt: string, list: readonly string[]) =>
  `(array[${list.map((word) => `'${word}'`).join(', ')}])[1 + ${drawn(salt, list.length)}]`
const name = (salt: string, parts: number) =>
  `initcap(${Array.from({ length: parts }, (_, at) => oneOf(`${salt}${at}`, syllables)).join(' || ')})`
const signs = (salt: string, from: string, count: number) =>
  Array.from(
    { length: count },
    (_, at) => `substr('${from}', 1 + ${drawn(`${salt}${at}`, from.length)}, 1)`,
  ).join(' || ')

const letters = 'ABCDEFGHJKLMNPRSTUVWXYZ'
const digits = '0123456789'
/** Four of five vehicles have a customer of their own; each fifth belongs to the one before it. */
const owner = id('customer', '(n - (n % 5) / 4)')
const sensor = (wheel: number) => signs(`sensor${wheel}`, '0123456789ABCDEF', 8)

const statements = [
  `insert into customers (shop_id, id, name, phone, may_call)
    select $1, ${id('customer')}, ${name('given', 2)} || ' ' || ${name('family', 3)},
      '+1 555 ' || ${signs('exchange', digits, 3)} || ' ' || ${signs('line', digits, 4)}, true
    from generate_series($2::int, $3::int) as n where n % 5 < 4`,
  `insert into vehicles (shop_id, id, customer_id, plate, vin, description)
    select $1, ${id('vehicle')}, ${owner}, ${signs('plate', letters, 3)} || ' ' || ${signs('number', digits, 4)},
      ${signs('vin', `${letters}${digits}`, 10)} || lpad(n::text, 7, '0'),
      ${oneOf('make', makes)} || ' ' || ${oneOf('model', models)} || ' ' || (2004 + ${drawn('year', 22)})
    from generate_series($2::int, $3::int) as n`,
  `insert into order_heads (shop_id, order_id, location_id, number, seq, hash, customer_id, vehicle_id, opened_at,
      waits_here, is_open, sealed, agenda, updated_at, ended_at)
    select $1, ${id('order')}, (select id from locations where shop_id = $1 order by id limit 1), 'G-' || n, 1,
      repeat('a', 64), ${owner}, ${id('vehicle')}, timestamptz '2020-01-01' + n * interval '4 minutes', false, false, true,
      '[]', timestamptz '2020-01-01', timestamptz '2020-01-02' + n * interval '4 minutes'
    from generate_series($2::int, $3::int) as n where n % 100 < ${seenOfHundred}`,
  // The tokens alone: a seen sensor hangs on an entry, and entries are not what is measured here.
  `insert into search_tokens (shop_id, kind, token, subject_id)
    select $1, made.kind, made.token, ${id('vehicle')}
    from generate_series($2::int, $3::int) as n,
      unnest(array[${[1, 2, 3, 4].map(sensor).join(', ')}]) as sensor_id, search_of_sensor(sensor_id) as made
    where n % 100 < ${seenOfHundred} on conflict do nothing`,
]

/** Fills the shop with the vehicles numbered `from` to `to`, each with what belongs to it; a line a tenth goes to `progress`. */
export const fillShop = async (
  pool: Pool,
  {
    shopId,
    from,
    to,
    progress,
  }: { shopId: string; from: number; to: number; progress: (line: string) => void },
): Promise<void> => {
  const begun = performance.now()
  const tenth = Math.ceil((to - from + 1) / 10)
  for (let first = from; first <= to; first += batch) {
    const last = Math.min(first + batch - 1, to)
    for (const text of statements) await pool.query(text, [shopId, first, last])
    if (Math.floor((last - from + 1) / tenth) > Math.floor((first - from) / tenth))
      progress(`${last} of ${to} vehicles, ${((performance.now() - begun) / 1000).toFixed(0)} s`)
  }
  await pool.query('vacuum analyze')
}
