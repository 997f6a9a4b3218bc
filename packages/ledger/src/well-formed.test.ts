import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { canonicalText } from './digests.ts'
import { parseDraft } from './draft.ts'
import type { Entry } from './entry.ts'
import { kindNames } from './registry.ts'
import { Day, Id, Instant, plainText } from './text.ts'
import { illFormedIn } from './well-formed.ts'

const frozen = `${import.meta.dirname}/frozen`
const entries = readdirSync(frozen)
  .filter((file) => file.endsWith('.json'))
  .flatMap((file) => JSON.parse(readFileSync(`${frozen}/${file}`, 'utf8')) as Entry[])

/** Ids of the ledger. What a sheet says of itself is words, whatever it looks like. */
const uuids = /(?<!"(?:sheetId|enteredBy|verifiedBy)":)"[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}"/g
const inUpperCase = <T>(value: T): T =>
  JSON.parse(JSON.stringify(value).replace(uuids, (id) => id.toUpperCase())) as T

const draftOf = ({ id, orderId, kind, version, payload, writtenAt, restsOn }: Entry) => ({
  id,
  orderId,
  kind,
  version,
  payload,
  writtenAt,
  restsOn,
})
const senderOf = ({ shopId, writtenBy, deviceId }: Entry) => ({ shopId, writtenBy, deviceId })

describe('an id', () => {
  it('is lowered, wherever it is in an entry of any kind', () => {
    expect(new Set(entries.map(({ kind }) => kind))).toEqual(new Set(kindNames))
    for (const entry of entries) {
      const parsed = parseDraft(inUpperCase(draftOf(entry)), senderOf(entry))
      expect(parsed, `${entry.kind} ${entry.seq}`).toMatchObject({ ok: true })
      if (parsed.ok) expect(parsed.draft, entry.kind).toEqual({ ...draftOf(entry), ...senderOf(entry) })
    }
  })

  it('is refused where it is none', () => {
    for (const text of [
      '',
      'first',
      '018f3c1a-0000-7000-8000-abcdefabcde',
      '{018f3c1a-0000-7000-8000-abcdefabcdef}',
    ])
      expect(Id.safeParse(text).success).toBe(false)
  })
})

describe('a text', () => {
  it('is refused where it holds half a character or a control character', () => {
    const text = plainText(20)
    for (const wrong of ['\ud83d', 'a\udd27b', 'a\0b', 'a\nb', '\u009f'])
      expect(text.safeParse(wrong).success, JSON.stringify(wrong)).toBe(false)
    for (const right of ['🔧', 'Jose\u0301', 'José', 'لوحة', 'a\u200db'])
      expect(text.safeParse(right).success, right).toBe(true)
  })

  it('that cannot be read back as it was written is found, wherever it is', () => {
    expect(illFormedIn({ a: [{ b: 'x\0' }], c: 'fine', d: '\ud800' })).toEqual(
      expect.arrayContaining([
        { path: ['a', '0', 'b'], why: 'nul' },
        { path: ['d'], why: 'half-a-character' },
      ]),
    )
    expect(illFormedIn({ '\udc00': 1 })).toEqual([{ path: [], why: 'half-a-character' }])
    expect(illFormedIn(new Uint8Array([0]))).toEqual([])
  })

  it('that is well formed is passed, and what is found of another is exactly what its bytes would lose', () => {
    const anyText = fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 6 })
    fc.assert(
      fc.property(anyText, (units) => {
        const text = String.fromCharCode(...units)
        const comesBack = Buffer.from(text, 'utf8').toString('utf8') === text && !text.includes('\0')
        expect(illFormedIn([text]).length === 0).toBe(comesBack)
      }),
      { seed: 20_260_112, numRuns: 2_000 },
    )
  })

  it('is looked for without running out of stack, however deep a value is nested', () => {
    const deep = JSON.parse(`${'['.repeat(5_000)}${']'.repeat(5_000)}`) as unknown
    expect(illFormedIn(deep)).toEqual([{ path: Array(40).fill('0'), why: 'too-deep' }])
    const [entry] = entries
    if (!entry) throw new Error('there is no frozen entry')
    const parsed = parseDraft({ ...draftOf(entry), payload: deep }, senderOf(entry))
    expect(parsed).toMatchObject({
      ok: false,
      faults: [{ allowed: 'lists and objects up to 40 levels deep' }],
    })
  })
})

describe('an instant and a day', () => {
  it('have a year that calendars and the database know', () => {
    expect(Instant.safeParse('0000-01-01T00:00:00.000Z').success).toBe(false)
    expect(Day.safeParse('0000-02-29').success).toBe(false)
    expect(Instant.safeParse('0001-01-01T00:00:00.000Z').success).toBe(true)
    expect(Instant.safeParse('2026-02-30T00:00:00.000Z').success).toBe(false)
  })
})

describe('a number at its limits', () => {
  it('has the same canonical text after it was written and read', () => {
    const limits = [-0, 0, 5e-324, 1e21, 1e-7, 2 ** 53, -(2 ** 53), 1.7976931348623157e308, 0.1 + 0.2, 1 / 3]
    fc.assert(
      fc.property(
        fc.oneof(fc.constantFrom(...limits), fc.double({ noNaN: true, noDefaultInfinity: true })),
        (n) => {
          const text = canonicalText({ n })
          expect(canonicalText(JSON.parse(text))).toBe(text)
        },
      ),
      { seed: 20_260_112, numRuns: 2_000 },
    )
  })
})
