import { expect, it } from 'vitest'
import { openBytes, sealBytes } from './sealed-bytes.ts'

const plain = Uint8Array.from({ length: 300 }, (_, at) => at % 7)

it('sealed bytes open with their own key, and never look the same twice', async () => {
  const [one, other] = [await sealBytes(plain), await sealBytes(plain)]
  expect(await openBytes(one)).toEqual(plain)
  expect(one.key).not.toBe(other.key)
  expect(Buffer.from(one.bytes).equals(Buffer.from(other.bytes))).toBe(false)
})

it('sealed bytes stay shut for another key, and when a bit was changed', async () => {
  const sealed = await sealBytes(plain)
  expect(await openBytes({ ...sealed, key: (await sealBytes(plain)).key })).toBeNull()
  expect(await openBytes({ ...sealed, key: 'AAAA' })).toBeNull()
  for (const at of [3, 40, sealed.bytes.length - 1]) {
    const changed = sealed.bytes.slice()
    changed[at] = (changed[at] ?? 0) ^ 1
    expect(await openBytes({ ...sealed, bytes: changed })).toBeNull()
  }
  expect(await openBytes({ ...sealed, bytes: sealed.bytes.slice(0, 5) })).toBeNull()
})
