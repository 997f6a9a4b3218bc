import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readSensorId } from './read-sensor-id.ts'
import { idKey, idText, listedId } from './sensor-id.ts'

describe('a sensor ID', () => {
  it('is a number, whatever its case, zeros and notation', () => {
    expect(idKey('00a1b2', 'hex')).toBe('A1B2')
    expect(idKey('41394', 'decimal')).toBe('A1B2')
    expect(idKey('0041394', 'decimal')).toBe('A1B2')
    expect(idKey('000', 'hex')).toBe('0')
  })

  it('equals no other where it is not in the notation it is said to be in', () => {
    expect(idKey('A1B2', 'decimal')).toBe('not-decimal:A1B2')
    expect(idKey('41394A', 'decimal')).toBe('not-decimal:41394A')
  })

  it('is written again in either notation', () => {
    expect(idText('A1B2', 'hex')).toBe('A1B2')
    expect(idText('A1B2', 'decimal')).toBe('41394')
  })

  it('is listed with eight digits at least, so that leading zeros find the same sensor', () => {
    expect(listedId('a1b2cf7')).toBe('0A1B2CF7')
    expect(listedId('00000A1B2CF7')).toBe('0A1B2CF7')
    expect(listedId('123456789A')).toBe('123456789A')
  })
})

describe('a typed sensor ID', () => {
  it.each([
    [' 0x1a:2b 3c-12 ', 'hex', '1A2B3C12', '1A2B3C12'],
    ['00A1.B2C3', 'hex', '00A1B2C3', 'A1B2C3'],
    ['12345678', 'hex', '12345678', '12345678'],
    ['0x123456789', 'hex', '123456789', '123456789'],
    ['4294967296', 'hex', '4294967296', '4294967296'],
    ['12345678901', 'hex', '12345678901', '12345678901'],
    ['4294967294', 'decimal', '4294967294', 'FFFFFFFE'],
    ['0305419896', 'decimal', '0305419896', '12345678'],
    ['1234567890123456', 'decimal', '1234567890123456', '462D53C8ABAC0'],
    ['1234567890A', 'hex', '1234567890A', '1234567890A'],
    ['A123456789', 'hex', 'A123456789', 'A123456789'],
    ['FFFFFFFFFFFFFFFE', 'hex', 'FFFFFFFFFFFFFFFE', 'FFFFFFFFFFFFFFFE'],
  ] as const)('%s, %s, is taken as %s', (typed, notation, text, key) => {
    expect(readSensorId(typed, notation)).toEqual({ ok: true, value: { text, key } })
  })

  it.each([
    ['', 'hex', 'empty', /whole ID/],
    [' 0x ', 'hex', 'empty', /whole ID/],
    ['1A2B3CG1', 'hex', 'character', /letters A to F/],
    ['O1A2B3C1', 'hex', 'character', /letters A to F/],
    ['12B4O', 'decimal', 'character', /^the digits 0 to 9$/],
    ['11112222333344445', 'hex', 'length', /16 signs at most; this one has 17/],
    ['1A2B3C12', 'decimal', 'notation', /digits only/],
    ['0x12345678', 'decimal', 'notation', /digits only/],
    ['439041042', 'hex', 'notation', /clear whether/],
    ['4294967295', 'hex', 'notation', /clear whether/],
    ['4294967295', 'decimal', 'none', /the ID of one sensor/],
    ['00000000', 'hex', 'none', /the ID of one sensor/],
    ['FFFFFFFF', 'hex', 'none', /the ID of one sensor/],
  ] as const)('"%s", %s, is refused: %s', (typed, notation, fault, allowed) => {
    expect(readSensorId(typed, notation)).toMatchObject({
      ok: false,
      fault,
      found: typed,
      allowed: expect.stringMatching(allowed),
      do: expect.stringMatching(/\w/),
    })
  })

  it('that may be either is refused with both', () => {
    expect(readSensorId('439041042', 'hex')).toMatchObject({
      do: 'Decimal, it is the sensor 1A2B3C12: type that. If it is hexadecimal after all, type 0x439041042.',
    })
  })

  it('never makes the reader throw, and what is taken is read the same again', () => {
    const nearly = fc.string({ unit: fc.constantFrom(...'0123456789ABCDEFabcdefxXGO:.- '), maxLength: 20 })
    const digits = fc.string({ unit: fc.constantFrom(...'0123456789'), maxLength: 18 })
    fc.assert(
      fc.property(
        fc.oneof(nearly, digits, fc.string({ unit: 'binary', maxLength: 30 })),
        fc.constantFrom('hex', 'decimal'),
        (typed, notation) => {
          const read = readSensorId(typed, notation)
          if (!read.ok) {
            expect(read.allowed.length * read.do.length).toBeGreaterThan(0)
            return
          }
          const prefix = notation === 'hex' ? '0x' : ''
          expect(readSensorId(prefix + read.value.text, notation)).toEqual(read)
          expect(idKey(read.value.text, notation)).toBe(read.value.key)
        },
      ),
      { seed: 433_920, numRuns: 10_000 },
    )
  })
})
