import { describe, expect, it } from 'vitest'
import { rowsOpen } from '../form/rows.ts'
import { rowsAsHeard, sensorAnswerOf, sensorRows } from './sensor-rows.ts'

const known = [{ id: '1A2B3C12', says: 'same as stored' }]
const keys = (values: Record<string, string | null>) => sensorRows(values, known).map(({ key }) => key)

describe('the sensor form', () => {
  it('asks a silent sensor for nothing but how often it was asked', () => {
    expect(keys({})).toEqual(['answer'])
    expect(keys({ answer: 'silent' })).toEqual(['answer', 'tries'])
  })

  it('lets figures be left out only on purpose', () => {
    const values = { answer: 'answered', battery: 'ok' }
    expect(rowsOpen(sensorRows(values, known), values).map(({ key }) => key)).toEqual([
      'pressure',
      'temperature',
      'id',
    ])
  })

  it('makes of it what the ledger takes; what was left out stays null', () => {
    const values = { answer: 'answered', pressure: '31.2', temperature: null, id: '3c12', battery: 'low' }
    expect(sensorAnswerOf(values, known, 2)).toEqual({
      answer: 'answered',
      tries: 3,
      id: '1A2B3C12',
      pressure: { value: 31.2, unit: 'psi' },
      temperature: null,
      battery: 'low',
      frequencyMHz: null,
      followsPressure: null,
      learnRefusals: null,
    })
    expect(sensorAnswerOf({ answer: 'silent', tries: '3' }, known, 0)).toEqual({ answer: 'silent', tries: 3 })
    expect(sensorAnswerOf({}, known, 0)).toBeNull()
  })

  it('stands filled in with what the sensor told, so that one more thing can be added and nothing is lost', () => {
    const reading = {
      answer: 'answered',
      tries: 2,
      id: '1A2B3C12',
      pressure: { value: 31.2, unit: 'psi' },
      temperature: null,
      battery: 'ok',
      frequencyMHz: 433.92,
      followsPressure: true,
      learnRefusals: 2,
    } as const
    expect(sensorAnswerOf(rowsAsHeard(reading), known, 1)).toEqual(reading)
    expect(rowsAsHeard({ answer: 'silent', tries: 2 })).toEqual({})
  })
})
