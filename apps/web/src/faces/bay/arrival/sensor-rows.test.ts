import { describe, expect, it } from 'vitest'
import { rowAfter, rowsOpen } from '../form/rows.ts'
import { rowsAsHeard, sensorAnswerOf, sensorRows } from './sensor-rows.ts'

const known = [{ id: '1A2B3C12', says: 'same as stored' }]
const question = {
  listedParts: [],
  known,
  expected: known,
  temperatures: [],
  mayBeExcused: true,
  asked: undefined,
}
const keys = (values: Record<string, string | null>, asked?: string) =>
  sensorRows(values, { ...question, asked }).map(({ key }) => key)

describe('the sensor form', () => {
  it('needs nothing of a silent sensor but how often it was tried', () => {
    expect(keys({})).toEqual(['answer'])
    expect(keys({ answer: 'silent' })).toEqual(['answer', 'tries'])
  })

  it('lets figures be left out only on purpose', () => {
    const values = { answer: 'answered' }
    expect(rowsOpen(sensorRows(values, question), values).map(({ key }) => key)).toEqual([
      'id',
      'temperature',
      'pressure',
    ])
  })

  it('takes an ID that is stored by the press that says that it answers', () => {
    const [answer] = sensorRows({}, question)
    expect(answer).toMatchObject({
      options: [{ value: 'same:1A2B3C12' }, { value: 'answered' }, { value: 'silent' }, { value: 'cannot' }],
    })
    const values = { answer: 'same:1A2B3C12', temperature: '27', pressure: '31.2' }
    expect(keys(values)).not.toContain('id')
    expect(sensorAnswerOf(values, [], 0)).toMatchObject({ answer: 'answered', tries: 1, id: '1A2B3C12' })
  })

  it('fills in no frequency and no battery for anyone, and offers what few readers show only on request', () => {
    const values = { answer: 'answered', id: '1A2B3C12', temperature: '27', pressure: '31.2' }
    expect(sensorAnswerOf(values, known, 0)).toMatchObject({ frequencyMHz: null, battery: null })
    expect(rowAfter(sensorRows(values, question), values, 'pressure')).toBeNull()
    expect(keys(values)).toEqual(['answer', 'id', 'temperature', 'pressure', 'battery', 'frequency'])
    expect(keys(values, 'follows')).toContain('follows')
    expect(keys(values, 'learnRefusals')).toContain('learnRefusals')
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

  it('is filled in with what the sensor sent, so that one more thing can be added and nothing is lost', () => {
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
