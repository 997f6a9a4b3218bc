/**
 * Source: npm library vin-validator 1.0.0 (ISC), which says yes or no to a VIN by the same arithmetic, written
 * independently. It knows no market, so a number from elsewhere is compared by whether advice on its check digit was
 * given; and it says yes to dummies such as seventeen zeros, as the arithmetic does.
 */

import { fitScan } from '@bayledger/reckoning/scan/fit-scan'
import { readScan } from '@bayledger/reckoning/scan/read-scan'
import { vinCheckDigit } from '@bayledger/reckoning/vehicle/check-digit'
import { readVin } from '@bayledger/reckoning/vehicle/vin'
import { validate } from 'vin-validator'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const characters = 'ABCDEFGHJKLMNPRSTUVWXYZ0123456789'

/** A fixed series of numbers from 0 to 32 (a linear congruential generator), so that every run checks the same. */
const series = (seed: number): (() => number) => {
  let state = seed
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return Math.floor((state / 2 ** 32) * characters.length)
  }
}

const randomVins = (first: string, count: number): string[] => {
  const next = series(first.charCodeAt(0))
  return Array.from({ length: count }, () => {
    const others = Array.from({ length: 16 }, () => characters[next()] ?? '0').join('')
    const vin = first + others
    // Half of them with the digit that belongs there, so that both answers come up.
    return next() % 2 === 0 ? vin : vin.slice(0, 8) + vinCheckDigit(vin) + vin.slice(9)
  })
}

/** Ours says yes without a word on the check digit. */
const saysYes = (vin: string): boolean => {
  const read = readVin(vin)
  return read.ok && !read.value.advice.some((words) => words.includes('check digit'))
}

published({ document: 'vin-validator (npm)', edition: '1.0.0', certainty: 'read' }, () => {
  it.each([...characters])('agrees on 300 numbers that begin with %s, some right and some wrong', (first) => {
    const vins = randomVins(first, 300)
    const answers = vins.map(validate)
    expect(new Set(answers).size).toBe(2)
    expect(vins.map(saysYes)).toEqual(answers)
  })

  it.each(Array.from({ length: 17 }, (_, place) => place))(
    'agrees on every other character at place %i (from 0) of a right number',
    (place) => {
      const vin = '1ZZ12AB4XR0000004'
      const others = [...characters].map((one) => vin.slice(0, place) + one + vin.slice(place + 1))
      expect(others.map(saysYes)).toEqual(others.map(validate))
    },
  )

  it.each([...'IOQ'])('agrees that a number with %s is none', (letter) => {
    const vin = `1ZZ12AB4XR00${letter}0004`
    expect([saysYes(vin), validate(vin)]).toEqual([false, false])
  })

  it.each([15, 16, 18])('agrees that %i characters are none', (length) => {
    const vin = '1ZZ12AB4XR00000041'.slice(0, length)
    expect([saysYes(vin), validate(vin)]).toEqual([false, false])
  })

  it.each([...'12345'])('agrees on 300 scanned numbers that begin with %s', (first) => {
    const vins = randomVins(first, 300)
    const answers = vins.map(validate)
    expect(new Set(answers).size).toBe(2)
    expect(vins.map((vin) => fitScan(readScan(`]C0I${vin}`, []), 'vin').ok)).toEqual(answers)
  })

  it('says yes to seventeen zeros, as the arithmetic does; ours adds that no vehicle carries it', () => {
    const read = readVin('0'.repeat(17))
    expect(validate('0'.repeat(17))).toBe(true)
    expect(read.ok && read.value.advice).toEqual([expect.stringContaining('no vehicle carries it')])
  })
})
