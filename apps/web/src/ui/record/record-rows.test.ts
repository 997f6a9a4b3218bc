import { describe, expect, it } from 'vitest'
import {
  changesBetween,
  isFoundIn,
  placedFields,
  type RecordRow,
  recordFault,
  recordWords,
  yesNoRow,
} from './record-rows.ts'

const altitude: RecordRow = {
  kind: 'number',
  key: 'altitude',
  label: 'Altitude',
  unit: 'ft',
  low: -100,
  high: 900,
}
const range: RecordRow = { ...altitude, key: 'range', label: 'Range', unit: 'psi', low: 0, decimals: 1 }
const due: RecordRow = { kind: 'day', key: 'due', label: 'Due', optional: 'not known' }
const name: RecordRow = { kind: 'text', key: 'name', label: 'Name', most: 5 }
const check = yesNoRow('check', 'Second check', { yes: 'always', no: 'not here' })
const ways: RecordRow = {
  kind: 'several',
  key: 'ways',
  label: 'Ways',
  noneWord: 'in no way',
  options: [
    { value: 'link', label: 'by link' },
    { value: 'telephone', label: 'by telephone' },
  ],
}

describe('a row of a record', () => {
  it.each([
    [altitude, '820', undefined],
    [altitude, ' 820 ', undefined],
    [altitude, '', 'Fill this in.'],
    [altitude, '8,20', 'Type a number with digits only, and a point before decimals.'],
    [altitude, '820.5', 'Type a whole number.'],
    [altitude, '-200', '-200 ft cannot be: allowed is -100 to 900 ft. Read it again.'],
    [range, '30.5', undefined],
    [range, '30.55', 'Keep it to 1 decimal.'],
    [range, '-1', '-1 psi cannot be: allowed is 0 to 900 psi. Read it again.'],
    [due, '', undefined],
    [due, '2026-02-28', undefined],
    [due, '2026-13-01', 'Type a day, as 2026-03-02.'],
    [name, 'Quarry', 'Keep it to 5 letters.'],
    [check, '', 'Fill this in.'],
    [check, 'maybe', 'Choose one of the list.'],
    [ways, '', undefined],
  ] as const)('%o says of "%s" what is wrong, and what to do', (row, value, fault) => {
    expect(recordFault(row, value)).toBe(fault)
  })

  it.each([
    [altitude, '-20', '−20 ft'],
    [due, '2026-03-02', 'Mar 2, 2026'],
    [due, '', 'not known'],
    [check, 'no', 'not here'],
    [ways, 'link,telephone', 'by link, by telephone'],
    [ways, '', 'in no way'],
    [name, '', 'empty'],
  ] as const)('%o reads "%s" as words', (row, value, words) => {
    expect(recordWords(row, value)).toBe(words)
  })
})

describe('two versions', () => {
  it('differ in the rows whose value differs, blanks around it aside', () => {
    const before = { altitude: '820', due: '', name: 'Home' }
    const after = { altitude: '830 ', due: '2026-03-02', name: ' Home' }
    expect(
      changesBetween([altitude, due, name], before, after).map((one) => [one.row.key, one.before, one.after]),
    ).toEqual([
      ['altitude', '820 ft', '830 ft'],
      ['due', 'not known', 'Mar 2, 2026'],
    ])
  })
})

describe('what the server says of fields', () => {
  const hours: RecordRow = { kind: 'text', key: 'hours.0', label: 'Monday' }
  it('stands at the row of the field or of what the field is part of, and is not lost where there is none', () => {
    const { atRows, elsewhere } = placedFields(
      [altitude, hours],
      [
        { field: 'content.altitude', found: '-2000', allowed: '-1500 or more' },
        { field: 'content.hours.0.opens', found: '"7"', allowed: 'a time' },
        { field: 'content.nickname', found: 'an unknown field', allowed: 'no such field' },
      ],
    )
    expect(atRows).toEqual({
      altitude: 'Found -2000; allowed: -1500 or more.',
      'hours.0': 'Found "7"; allowed: a time.',
    })
    expect(elsewhere.map(({ field }) => field)).toEqual(['content.nickname'])
  })
})

describe('searching a list', () => {
  it('wants every word, in any order and case', () => {
    expect(isFoundIn('street 6', ['Tamber Street', '6 bays'])).toBe(true)
    expect(isFoundIn('street 7', ['Tamber Street', '6 bays'])).toBe(false)
    expect(isFoundIn('', ['Tamber Street'])).toBe(true)
  })
})
