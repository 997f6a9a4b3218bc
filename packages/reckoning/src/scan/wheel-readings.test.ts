import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { WheelEvidence } from '../evidence/evidence-schema.ts'
import { isOfASensor } from '../sensor/sensor-id.ts'
import { readingOrder } from '../wheels.ts'
import { readWheelReadings } from './read-wheel-readings.ts'
import { type WheelReading, writeWheelReadings } from './wheel-readings.ts'

const four = `# reader 2, 09:40
LF, 1A2B3C10, 31.2 psi, 27 F, ok, 433.92 MHz

rf, 0x1a2b3c11, 214kPa, −3 °C, low
RR, silent, 3
LR, 1A2B3C13
SP, not-tried`

const shown = (readings: readonly WheelReading[]) => writeWheelReadings(readings)

describe('the readings of all wheels in one text', () => {
  it('are read line by line, each figure in its own unit', () => {
    const { readings, faults } = readWheelReadings(four)
    expect(faults).toEqual([])
    expect(readings).toEqual([
      {
        wheel: 'LF',
        answer: 'answered',
        id: '1A2B3C10',
        pressure: { value: 31.2, unit: 'psi' },
        temperature: { value: 27, unit: 'F' },
        battery: 'ok',
        frequencyMHz: 433.92,
      },
      {
        wheel: 'RF',
        answer: 'answered',
        id: '1A2B3C11',
        pressure: { value: 214, unit: 'kPa' },
        temperature: { value: -3, unit: 'C' },
        battery: 'low',
        frequencyMHz: null,
      },
      { wheel: 'RR', answer: 'silent', tries: 3 },
      {
        wheel: 'LR',
        answer: 'answered',
        id: '1A2B3C13',
        pressure: null,
        temperature: null,
        battery: null,
        frequencyMHz: null,
      },
      { wheel: 'SP', answer: 'not-tried' },
    ])
  })

  it('are written in reading order, what is not shown at the end left out', () => {
    expect(shown(readWheelReadings(four).readings)).toBe(
      'LF, 1A2B3C10, 31.2 psi, 27 F, ok, 433.92 MHz\nRF, 1A2B3C11, 214 kPa, -3 C, low\nRR, silent, 3\nLR, 1A2B3C13\nSP, not-tried',
    )
    expect(shown(readWheelReadings('LR, -, 31 psi\nLF, -').readings)).toBe('LF, -\nLR, -, 31 psi')
  })

  it.each([
    ['XX, 1A2B3C10', null, 'wheel', 'XX', { code: 'not-a-wheel' }],
    ['31.2 psi', null, 'wheel', '31.2 psi', { code: 'not-a-wheel' }],
    ['LF', 'LF', 'id', '', { code: 'not-an-id' }],
    ['LF, 1ZZ12AB4XR0000004', 'LF', 'id', '1ZZ12AB4XR0000004', { code: 'is-a-vin' }],
    ['LF, 3C10', 'LF', 'id', '3C10', { code: 'id-too-short' }],
    ['LF, 1A2B3CG0', 'LF', 'id', '1A2B3CG0', { code: 'not-an-id' }],
    ['LF, 439041042', 'LF', 'id', '439041042', { code: 'not-an-id' }],
    ['LF, FFFFFFFF', 'LF', 'id', 'FFFFFFFF', { code: 'not-an-id' }],
    ['LF, 1A2B3C10, 31,2 psi', 'LF', 'pressure', '31', { code: 'no-unit', units: ['psi', 'kPa', 'bar'] }],
    ['LF, 1A2B3C10, low', 'LF', 'pressure', 'low', { code: 'no-number' }],
    ['LF, 1A2B3C10, 401 psi', 'LF', 'pressure', '401 psi', { code: 'out-of-range', most: 400, unit: 'psi' }],
    ['LF, 1A2B3C10, 31 psi, 27', 'LF', 'temperature', '27', { code: 'no-unit', units: ['F', 'C'] }],
    ['LF, 1A2B3C10, 31 psi, 999 C', 'LF', 'temperature', '999 C', { code: 'out-of-range', unit: 'C' }],
    ['LF, 1A2B3C10, -, -, full', 'LF', 'battery', 'full', { code: 'not-a-battery' }],
    ['LF, 1A2B3C10, -, -, ok, 433.92', 'LF', 'frequency', '433.92', { code: 'no-unit', units: ['MHz'] }],
    ['LF, 1A2B3C10, -, -, ok, 315 MHz, x', 'LF', 'end', 'x', { code: 'too-many-fields' }],
    ['LF, silent, often', 'LF', 'tries', 'often', { code: 'not-a-count' }],
    ['LF, silent, 0', 'LF', 'tries', '0', { code: 'not-a-count' }],
    ['LF, not-tried, 2', 'LF', 'end', '2', { code: 'too-many-fields' }],
  ] as const)(
    '%j is refused by its line and field, and the other wheels are read',
    (line, wheel, field, found, why) => {
      const { readings, faults } = readWheelReadings(`RF, 1A2B3C11\n${line}`)
      expect(faults).toEqual([{ line: 2, wheel, field, found, why: expect.objectContaining(why) }])
      expect(readings.map((reading) => reading.wheel)).toEqual(['RF'])
    },
  )

  it('take neither line where a wheel or an ID comes twice', () => {
    const wheels = readWheelReadings('LF, 1A2B3C10\nLF, 1A2B3C11\nRF, 1A2B3C12')
    expect(wheels.readings.map(({ wheel }) => wheel)).toEqual(['RF'])
    expect(wheels.faults.map(({ line, why }) => [line, why.code])).toEqual([
      [1, 'wheel-twice'],
      [2, 'wheel-twice'],
    ])
    const ids = readWheelReadings('LF, 01A2B3C1\nRF, 1A2B3C1\nRR, silent')
    expect(ids.readings).toEqual([{ wheel: 'RR', answer: 'silent', tries: 1 }])
    expect(ids.faults.map(({ line, field, why }) => [line, field, why.code])).toEqual([
      [1, 'id', 'id-twice'],
      [2, 'id', 'id-twice'],
    ])
  })

  it('of any text are read without an exception, and every line is read, passed over or named', () => {
    const line = fc.string({ unit: fc.constantFrom(...'LFR,- 13A2BCpsi.°#\t'), maxLength: 30 })
    fc.assert(
      fc.property(fc.array(line, { maxLength: 8 }), (lines) => {
        const { readings, faults } = readWheelReadings(lines.join('\n'))
        const told = lines.filter((one) => !/^\s*(#|$)/.test(one)).length
        expect(readings.length + faults.length).toBe(told)
      }),
    )
  })
})

const nullable = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null })
const decimals = (least: number, most: number) =>
  fc
    .integer({ min: Math.ceil(least * 10_000), max: Math.floor(most * 10_000) })
    .map((value) => value / 10_000)

/** Within what the evidence allows, in units of its own choice. */
const anyReading = fc.oneof(
  fc.record({
    answer: fc.constant('answered' as const),
    id: nullable(
      fc
        .string({ unit: fc.constantFrom(...'0123456789ABCDEF'), minLength: 5, maxLength: 16 })
        .filter((id) => isOfASensor(id)),
    ),
    pressure: nullable(
      fc.oneof(
        decimals(-20, 400).map((value) => ({ value, unit: 'psi' as const })),
        decimals(-137.9, 2757.91).map((value) => ({ value, unit: 'kPa' as const })),
        decimals(-1.3791, 27.5791).map((value) => ({ value, unit: 'bar' as const })),
      ),
    ),
    temperature: nullable(
      fc.oneof(
        decimals(-150, 600).map((value) => ({ value, unit: 'F' as const })),
        decimals(-101.12, 315.56).map((value) => ({ value, unit: 'C' as const })),
      ),
    ),
    battery: nullable(fc.constantFrom('ok', 'low', 'not-reported' as const)),
    frequencyMHz: nullable(decimals(1, 10_000)),
  }),
  fc.record({ answer: fc.constant('silent' as const), tries: fc.integer({ min: 1, max: 99 }) }),
  fc.record({ answer: fc.constant('not-tried' as const) }),
)

const anyReadings = fc
  .subarray([...readingOrder])
  .chain((wheels) =>
    fc.tuple(
      ...wheels.map((wheel) =>
        anyReading.map((reading): WheelReading => ({ ...reading, wheel }) as WheelReading),
      ),
    ),
  )
  .filter((readings) => {
    const ids = readings.flatMap((one) =>
      one.answer === 'answered' && one.id ? [one.id.replace(/^0+/, '')] : [],
    )
    return new Set(ids).size === ids.length
  })

describe('what is written out', () => {
  it('is read back the same, and is evidence as the schema has it', () => {
    fc.assert(
      fc.property(anyReadings, (readings) => {
        expect(readWheelReadings(writeWheelReadings(readings))).toEqual({ readings, faults: [] })
        for (const reading of readings) {
          if (reading.answer !== 'answered') continue
          const { id, battery, frequencyMHz, answer } = reading
          expect(WheelEvidence.safeParse({ answer, id, battery, frequencyMHz }).success).toBe(true)
        }
      }),
    )
  })
})
