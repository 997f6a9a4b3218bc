import { readWheelReadings } from '@bayledger/reckoning/scan/read-wheel-readings'
import { describe, expect, it } from 'vitest'
import { readingFaultWords, readingWords } from './reading-words.ts'

const words = (text: string): string[] => readWheelReadings(text).readings.map(readingWords)
const faults = (text: string): string[] => readWheelReadings(text).faults.map(readingFaultWords)

describe('what was read of a wheel', () => {
  it.each([
    [
      'LF, 1A2B3C10, 31.2 psi, -3 C, ok, 433.92 MHz',
      'ID 1A2B3C10 · 31.2 psi · −3 °C · battery good · 433.92 MHz',
    ],
    ['LF, -, 214 kPa', 'answers, no ID shown · 214 kPa'],
    ['RR, silent', 'silent, asked once'],
    ['RR, silent, 3', 'silent, asked 3 times'],
    ['SP, not-tried', 'not asked: nothing is recorded'],
  ])('%j is told in words', (line, says) => {
    expect(words(line)).toEqual([says])
  })
})

describe('what could not be read', () => {
  it.each([
    [
      '31.2 psi',
      'Line 1, wheel: "31.2 psi" is no wheel. Begin the line with LF, RF, RR, LR or SP and a comma.',
    ],
    [
      'LF, 1A2B3C10, 31,2 psi',
      'Line 1, LF, pressure: "31" has no unit that is known here. Write psi, kPa or bar after the figure; decimals have a point.',
    ],
    [
      'LF, 1ZZ12AB4XR0000004',
      'Line 1, LF, ID: "1ZZ12AB4XR0000004" is a VIN. Put the ID of the sensor there.',
    ],
    [
      'LF, 1A2B3C10, 500 psi',
      'Line 1, LF, pressure: "500 psi" cannot be: allowed is −20 to 400 psi. Read it again.',
    ],
    [
      'LF, 1A2B3C10, -, -, full',
      'Line 1, LF, battery: "full" is no state of a battery. Write ok, low or not-reported, or a hyphen.',
    ],
    ['LF, silent, x', 'Line 1, LF, times asked: "x" is no number from 1 to 99.'],
    ['LF, 3C10', 'Line 1, LF, ID: "3C10" is too short. Put the whole ID there.'],
  ])('%j is told by line, wheel and field', (line, says) => {
    expect(faults(line)).toEqual([says])
  })

  it('names both lines of a wheel that comes twice', () => {
    expect(faults('LF, 1A2B3C10\nLF, 1A2B3C11')).toEqual([
      'Line 1, LF, wheel: the wheel comes twice, so neither line is taken. Leave one of them out.',
      'Line 2, LF, wheel: the wheel comes twice, so neither line is taken. Leave one of them out.',
    ])
  })
})
