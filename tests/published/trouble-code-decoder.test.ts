/**
 * Source: decoder of a public library for on-board diagnosis and its own unit tests, commit a378bdd8 of 6 April 2025, read:
 * the two-byte encoding of SAE J2012 / ISO 15031-6. The standard itself was not read.
 */
import { readTroubleCode, troubleCodesIn, troubleCodeText } from '@bayledger/reckoning/sensor/trouble-code'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const known = [
  [0x01, 0x04, 'P0104'],
  [0x41, 0x23, 'C0123'],
  [0x80, 0x03, 'B0003'],
] as const

published(
  {
    document: 'SAE J2012 / ISO 15031-6',
    section: 'two-byte codes, by a public decoder’s tests',
    edition: 'April 2025',
    certainty: 'read',
  },
  () => {
    it.each(known)('bytes %i %i are %s', (high, low, text) => {
      expect(troubleCodeText(high, low)).toBe(text)
    })

    it.each(known)('bytes %i %i are what %s is read as', (high, low, text) => {
      expect(readTroubleCode(text)).toMatchObject({ ok: true, value: { bytes: [high, low] } })
    })

    it('bytes 00 00 are padding, not a code', () => {
      expect(troubleCodesIn([0x01, 0x04, 0x00, 0x00])).toEqual({ codes: ['P0104'], note: null })
    })

    it('nothing but padding is no code', () => {
      expect(troubleCodesIn([0, 0, 0, 0]).codes).toEqual([])
    })

    it('the last byte of an odd count is dropped', () => {
      expect(troubleCodesIn([0x01, 0x04, 0x80]).codes).toEqual(['P0104'])
    })

    it.each([
      [0b00, 'P'],
      [0b01, 'C'],
      [0b10, 'B'],
      [0b11, 'U'],
    ])('the two highest bits %i are the letter %s', (bits, letter) => {
      expect(troubleCodeText(bits << 6, 0x01)?.[0]).toBe(letter)
    })

    it.each([0, 1, 2, 3])('the next two bits are the first digit %i', (digit) => {
      expect(troubleCodeText(digit << 4, 0x01)?.[1]).toBe(String(digit))
    })
  },
)
