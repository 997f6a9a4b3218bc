/**
 * Source: codes whose bytes were computed by hand from the encoding (letter in two bits, digit in two, three of four). C07xx
 * are in wide use for wheel sensors, with texts that differ by maker: none is claimed here.
 */
import { readTroubleCode, troubleCodeText } from '@bayledger/reckoning/sensor/trouble-code'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const computed = [
  [0x47, 0x50, 'C0750'],
  [0x47, 0x75, 'C0775'],
  [0xc1, 0x27, 'U0127'],
  [0x50, 0x00, 'C1000'],
  [0xbf, 0xff, 'B3FFF'],
  [0xd6, 0x1a, 'U161A'],
] as const

published(
  {
    document: 'SAE J2012 / ISO 15031-6',
    section: 'two-byte codes, computed by hand',
    certainty: 'computed from definition',
  },
  () => {
    it.each(computed)('bytes %i %i are %s', (high, low, text) => {
      expect(troubleCodeText(high, low)).toBe(text)
    })

    it.each(computed)('bytes %i %i are what %s is read as', (high, low, text) => {
      expect(readTroubleCode(text)).toMatchObject({ ok: true, value: { bytes: [high, low] } })
    })

    it.each([0x00, 0x47, 0x80, 0xc1, 0xff])(
      'every code of the high byte %i is read back to its bytes',
      (high) => {
        for (let low = 1; low <= 0xff; low += 1)
          expect(readTroubleCode(troubleCodeText(high, low) ?? '')).toMatchObject({
            ok: true,
            value: { bytes: [high, low] },
          })
      },
    )
  },
)
