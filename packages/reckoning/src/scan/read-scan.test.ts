import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { vinCheckDigit } from '../vehicle/check-digit.ts'
import { fitScan, type ScanWanted } from './fit-scan.ts'
import { readScan } from './read-scan.ts'

const vin = '1ZZ12AB4XR0000004'
const stock = ['TS-315-C', 'KIT 40', '12345678']
const fit = (raw: string, wanted: ScanWanted) => fitScan(readScan(raw, stock), wanted)
const isA = (raw: string, wanted: ScanWanted) => {
  const answer = fit(raw, wanted)
  return answer.ok ? 'taken' : answer.is.isA
}

describe('a scanned VIN', () => {
  it.each([
    ['as it is', vin],
    ['with the identifier I before it', `I${vin}`],
    ['in small letters, with blanks', ' 1zz 12ab4xr 0000004 '],
    ['after a symbology identifier', `]A0${vin}`],
    ['after both', `]C0I${vin}`],
    ['between the stars of Code 39', `*I${vin}*`],
    ['with its label', `VIN: ${vin}`],
    ['in a Data Matrix of several fields', `[)>\u001e06\u001dI${vin}\u001d1P99X-1\u001e\u0004`],
    ['among lines of a door label', `MFD 03/24\nVIN ${vin}\nGVWR 2100 KG`],
    ['in the address of a QR code', `https://example.com/v?vin=${vin}&x=1`],
  ])('is taken %s', (_how, raw) => {
    expect(fit(raw, 'vin')).toEqual({ ok: true, value: vin })
  })

  // 49 CFR 565.15(c): the ninth place must carry the check digit, so each other sign there is a misread one.
  it.each([...'0123456789X'].filter((sign) => sign !== vinCheckDigit(vin)))(
    'with %s for its check digit is misread, and says which digit belongs there',
    (sign) => {
      expect(fit(`I${vin.slice(0, 8)}${sign}${vin.slice(9)}`, 'vin')).toMatchObject({
        ok: false,
        is: {
          isA: 'misread-vin',
          reading: { fault: 'check-digit', allowed: expect.stringContaining('check digit X') },
        },
      })
    },
  )

  it('from outside North America needs no check digit', () => {
    expect(fit('IZZZ9876B0B1000002', 'vin')).toEqual({ ok: true, value: 'ZZZ9876B0B1000002' })
  })

  it('is no sensor and no part', () => {
    for (const wanted of ['sensor-id', 'part'] as const) {
      expect(isA(`I${vin}`, wanted)).toBe('vin')
      expect(isA(`${vin.slice(0, 8)}0${vin.slice(9)}`, wanted)).toBe('misread-vin')
    }
  })

  it('of 16 or 18 characters is none', () => {
    expect(isA(vin.slice(1), 'vin')).toBe('unknown')
    expect(isA(`${vin}7`, 'vin')).toBe('unknown')
  })
})

describe('a scanned sensor ID', () => {
  it.each([
    ['1A2B3C12', '1A2B3C12'],
    ['0x1a2b3c12', '0X1A2B3C12'],
    [']d11a2b3c12', '1A2B3C12'],
    ['ID: 1A2B3C12 433.92 MHz', '1A2B3C12'],
    ['SENSOR ID=1A2B3C12;LOT 2291', '1A2B3C12'],
    ['S/N 439041042', '439041042'],
    ['439041042', '439041042'],
    ['1A2B 3C12', '1A2B3C12'],
    ['RR 1A2B3C12', '1A2B3C12'],
  ])('is taken from %j', (raw, id) => {
    expect(fit(raw, 'sensor-id')).toEqual({ ok: true, value: id })
  })

  it.each([
    ['TS-315-C', 'part'],
    ['12345678', 'part'],
    ['6291041500213', 'product-code'],
    ['LF 1A2B3C10\nRF 1A2B3C11', 'wheels'],
    ['1A2B3C10 1A2B3C11', 'wheels'],
    ['3C12', 'unknown'],
    ['the facade', 'unknown'],
    ['https://example.com/lot/7', 'unknown'],
    ['FFFFFFFF', 'unknown'],
    ['\u0000\u0003', 'unknown'],
    ['', 'unknown'],
  ])('is not taken from %j: %s', (raw, what) => {
    expect(isA(raw, 'sensor-id')).toBe(what)
  })
})

describe('a scanned part number', () => {
  it.each([
    ['ts-315-c', 'TS-315-C'],
    ['PTS-315-C', 'TS-315-C'],
    ['1PTS-315-C', 'TS-315-C'],
    ['P/N: TS-315-C', 'TS-315-C'],
    ['KIT40', 'KIT 40'],
    ['12345678', '12345678'],
    ['QX-9001/B', 'QX-9001/B'],
    ['PN QX-9001;LOT 7', 'QX-9001'],
    ['6291041500213', '6291041500213'],
  ])('is taken from %j', (raw, part) => {
    expect(fit(raw, 'part')).toEqual({ ok: true, value: part })
  })

  it.each([
    ['1A2B3C12', 'sensor-id'],
    ['ID 12345679', 'sensor-id'],
    ['https://example.com/1', 'unknown'],
    ['hello', 'unknown'],
    ['!!!', 'unknown'],
  ])('is not taken from %j: %s', (raw, what) => {
    expect(isA(raw, 'part')).toBe(what)
  })
})

describe('a product code', () => {
  // The examples of GS1 (6291041500213) and of the UPC-A in encyclopedias (036000291452); from memory.
  it.each(['6291041500213', '036000291452'])('%s is told from a sensor by its check digit', (code) => {
    expect(isA(code, 'sensor-id')).toBe('product-code')
    const last = (Number(code.at(-1)) + 1) % 10
    expect(isA(code.slice(0, -1) + last, 'sensor-id')).toBe('taken')
  })
})

describe('any text at all', () => {
  it('is read without an exception, and what is taken is a VIN, an ID or a part', () => {
    const signs = fc.string({
      unit: fc.constantFrom(...'IVNP10ABCDEFXZ-*]d0:; \n\t\u001d\u0000'),
      maxLength: 40,
    })
    fc.assert(
      fc.property(fc.oneof(signs, fc.string({ unit: 'binary', maxLength: 60 })), (raw) => {
        const scan = readScan(raw, stock)
        const asVin = fitScan(scan, 'vin')
        if (asVin.ok) expect(asVin.value).toMatch(/^[A-HJ-NPR-Z0-9]{17}$/)
        if (asVin.ok) expect(fitScan(scan, 'sensor-id').ok || fitScan(scan, 'part').ok).toBe(false)
        const asId = fitScan(scan, 'sensor-id')
        if (asId.ok) expect(fitScan(readScan(asId.value, []), 'sensor-id')).toEqual(asId)
      }),
    )
  })
})
