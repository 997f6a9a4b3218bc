import type { Chance } from '../simulate/chance.ts'

/** Stands in a value for JSON text that `JSON.stringify` would not write; `jsonOf` puts the text in its place. */
type Raw = { readonly raw: string }

const isRaw = (value: unknown): value is Raw =>
  value !== null && typeof value === 'object' && Object.keys(value).join() === 'raw'

const nested = (levels: number): Raw => ({ raw: '['.repeat(levels) + ']'.repeat(levels) })
const nestedObjects = (levels: number): Raw => ({
  raw: `${'{"a":'.repeat(levels)}1${'}'.repeat(levels)}`,
})

export const hostileTexts: readonly [string, ...string[]] = [
  '',
  ' ',
  'a\u0000b',
  '\u0000',
  'a\ud800b',
  '\udc00',
  'line\r\nSet-Cookie: bayledger-desk=x',
  '\u202eright to left\u202c',
  '\u2028\u2029\ufeff\u200b',
  'Zoe\u0308 \u1e9b\u0323 🔧👩‍🔧',
  'x'.repeat(10_000),
  '🔧'.repeat(5_000),
  "'; drop table entries; --",
  '%00%0d%0a..%2f..%2f',
  '../../../../etc/passwd',
  '=1+1',
  '{{constructor.constructor("return 1")()}}',
  '<script>alert(1)</script>',
  '__proto__',
  '0000-01-01T00:00:00.000Z',
  '0000-01-01',
  '9999-12-31T23:59:59.999Z',
  '2026-02-30',
  '2026-01-12T16:40:00.000+05:00',
  '-271821-04-20T00:00:00.000Z',
  'W10=',
  // Places in a list as a cursor names them, none of them ours.
  ...['["a"]', '["a","b"]', '["9999-99-99T99:99:99.999Z","not-an-id"]', '["a\\u0000","b\\u0000"]'].map(
    (place) => Buffer.from(place).toString('base64url'),
  ),
  '1e400',
  '00000000-0000-0000-0000-000000000000',
  'ffffffff-ffff-ffff-ffff-ffffffffffff',
  '9'.repeat(400),
]

const hostileValues: readonly [unknown, ...unknown[]] = [
  null,
  true,
  0,
  -1,
  { raw: '-0' },
  { raw: '1e999' },
  { raw: '-1e999' },
  1e308,
  5e-324,
  0.1 + 0.2,
  2 ** 31,
  2 ** 53,
  1e21,
  { raw: '123456789012345678901234567890' },
  [],
  {},
  [null],
  [[]],
  { toString: 1, length: -1 },
  { raw: '{"__proto__":{"a":1},"constructor":{"prototype":{}}}' },
  { raw: '{"a":1,"a":2}' },
  nested(41),
  nested(5_000),
  nestedObjects(5_000),
  Array.from({ length: 20_000 }, () => null),
]

/** The same value with one thing wrong somewhere in it. The value that is given is not changed. */
export const spoiled = (chance: Chance, value: unknown): unknown => {
  const copy = structuredClone({ value })
  const places = placesIn(copy)
  const place = places[chance.below(places.length)]
  if (!place) return copy.value
  const [holder, key] = place
  const found = holder[key]
  const ways: (() => void)[] = [
    () => Reflect.deleteProperty(holder, key),
    () => Reflect.set(holder, key, chance.pick(hostileValues)),
    () => Reflect.set(holder, key, chance.pick(hostileTexts)),
    () => Reflect.set(holder, `${key}2`, found),
    () => Reflect.set(holder, chance.pick(hostileTexts), 1),
  ]
  if (typeof found === 'string')
    ways.push(
      () => Reflect.set(holder, key, found.toUpperCase()),
      () => Reflect.set(holder, key, `${found}${chance.pick(hostileTexts)}`),
      () => Reflect.set(holder, key, ` ${found}\n`),
      () => Reflect.set(holder, key, chance.pick(hostileTexts)),
    )
  if (typeof found === 'number')
    ways.push(
      () => Reflect.set(holder, key, String(found)),
      () => Reflect.set(holder, key, -found),
      () => Reflect.set(holder, key, found + 0.1),
      () => Reflect.set(holder, key, found * 1e12),
    )
  if (Array.isArray(found))
    ways.push(
      () => Reflect.set(holder, key, [...found, ...found]),
      () =>
        Reflect.set(
          holder,
          key,
          Array.from({ length: 300 }, () => found[0] ?? 'x'),
        ),
      () => Reflect.set(holder, key, []),
    )
  ways[chance.below(ways.length)]?.()
  return copy.value
}

type Holder = Record<string, unknown>

const placesIn = (holder: Holder): (readonly [Holder, string])[] =>
  Object.entries(holder).flatMap(([key, value]): (readonly [Holder, string])[] => [
    [holder, key],
    ...(value !== null && typeof value === 'object' && !isRaw(value) ? placesIn(value as Holder) : []),
  ])

/** The JSON text of a value, with raw text where it stands for some. */
export const jsonOf = (value: unknown): string => {
  const raws: string[] = []
  const text = JSON.stringify(value, (_key, member: unknown) => {
    if (!isRaw(member)) return member
    raws.push(member.raw)
    return `@raw-${raws.length - 1}@`
  })
  return (text ?? '').replace(/"@raw-(\d+)@"/g, (_, index: string) => raws[Number(index)] ?? 'null')
}
