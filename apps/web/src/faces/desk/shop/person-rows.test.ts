import { PersonContent } from '@bayledger/contract/people'
import { describe, expect, it } from 'vitest'
import { changesBetween, recordFaultsOf } from '../../../ui/record/record-rows.ts'
import { personContent, personRows, personValues } from './person-rows.ts'

const pell = PersonContent.parse({
  name: 'Pell Orrin',
  signInName: 'pell',
  roles: ['technician', 'lead'],
  active: true,
})

describe('a person as rows', () => {
  it('comes back as they were', () => {
    const values = personValues(pell)
    expect(recordFaultsOf(personRows(values), values)).toEqual({})
    expect(personContent(values)).toEqual(pell)
  })

  it.each(['P', 'Pell', 'pell orrin', '1pell'])('does not take the sign-in name "%s"', (signInName) => {
    const values = { ...personValues(pell), signInName }
    expect(Object.keys(recordFaultsOf(personRows(values), values))).toEqual(['signInName'])
  })

  it('tells in the history that a PIN was set, and nothing of it', () => {
    const before = personValues({ ...pell, pinVersion: 1, passwordVersion: 2 })
    const after = personValues({ ...pell, pinVersion: 2, passwordVersion: 2 })
    const changes = changesBetween(personRows(after), before, after)
    expect(changes.map(({ row, ...words }) => [row.label, words])).toEqual([
      ['PIN set', { before: 'never', after: 'once' }],
    ])
    expect(personContent(after)).toEqual(pell)
  })
})
