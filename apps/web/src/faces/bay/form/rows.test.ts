import { describe, expect, it } from 'vitest'
import { noneOfThem, rowWords, toggled } from '../../../ui/rows/rows.ts'
import { isAnswered, type Row, rowAfter, rowFault, rowsOpen, rowToShow } from './rows.ts'

const pressure: Row = { kind: 'number', key: 'pressure', label: 'Pressure', unit: 'psi', low: 0, high: 150 }
const temperature: Row = {
  kind: 'number',
  key: 'temperature',
  label: 'Temperature',
  unit: '°F',
  low: -60,
  high: 300,
  optional: 'not shown',
}
const battery: Row = {
  kind: 'choice',
  key: 'battery',
  label: 'Battery',
  options: [
    { value: 'ok', label: 'good' },
    { value: 'low', label: 'low' },
  ],
}
const damage: Row = {
  kind: 'several',
  key: 'damage',
  label: 'Damage',
  noneWord: 'no damage',
  options: [
    { value: 'bulge', label: 'bulge' },
    { value: 'puncture', label: 'puncture' },
  ],
}
const rows = [pressure, temperature, battery, damage]

describe('a row', () => {
  it('is answered by a number in its range, never by half a number', () => {
    expect(isAnswered(pressure, '31.2')).toBe(true)
    expect(isAnswered(pressure, '-')).toBe(false)
    expect(isAnswered(pressure, '')).toBe(false)
    expect(isAnswered(pressure, '312')).toBe(false)
    expect(rowFault(pressure, '312')).toBe('312 psi cannot be: allowed is 0 to 150 psi. Read it again.')
  })

  it('may be left out only where leaving it out has a word', () => {
    expect(isAnswered(temperature, null)).toBe(true)
    expect(isAnswered(pressure, null)).toBe(false)
  })

  it('keeps not answered and left out apart in its words', () => {
    expect(rowWords(temperature, undefined)).toBeNull()
    expect(rowWords(temperature, null)).toBe('not shown')
    expect(rowWords(temperature, '-4')).toBe('−4 °F')
    expect(rowWords(damage, noneOfThem)).toBe('no damage')
    expect(rowWords(damage, 'bulge,puncture')).toBe('bulge, puncture')
  })
})

describe('a form of rows', () => {
  it('names what must still be answered; what may be left out must at least not be wrong', () => {
    expect(rowsOpen(rows, {}).map(({ key }) => key)).toEqual(['pressure', 'battery', 'damage'])
    const values = { pressure: '31', temperature: '999', battery: 'ok', damage: 'none' }
    expect(rowsOpen(rows, values).map(({ key }) => key)).toEqual(['temperature'])
  })

  it('waits for a word where leaving out must be said', () => {
    const asked: Row = { ...temperature, asked: true }
    expect(rowsOpen([asked], {})).toEqual([asked])
    expect(rowsOpen([asked], { temperature: null })).toEqual([])
  })

  it('goes on to the next row without an answer and passes what was left out', () => {
    expect(rowAfter(rows, { pressure: '31' }, 'pressure')?.key).toBe('temperature')
    expect(rowAfter(rows, { pressure: '31', temperature: null }, 'pressure')?.key).toBe('battery')
    const rest = { battery: 'ok', damage: 'none' }
    expect(rowAfter(rows, { ...rest, pressure: '31' }, 'battery')).toBeNull()
    // One before it that must be answered and is not.
    expect(rowAfter(rows, rest, 'battery')?.key).toBe('pressure')
  })

  it('brings up what few readers show only by a tap on its cell', () => {
    const aside = [pressure, { ...battery, optional: 'not shown', aside: true } as const]
    expect(rowAfter(aside, { pressure: '31' }, 'pressure')).toBeNull()
    expect(rowToShow(aside, { pressure: '31' })?.key).toBe('pressure')
    expect(rowToShow(rows, {})?.key).toBe('pressure')
    expect(rowToShow(rows, { pressure: '31', temperature: null })?.key).toBe('battery')
  })

  it('takes several, and a tap again takes one back', () => {
    expect(toggled(toggled(noneOfThem, 'bulge'), 'puncture')).toBe('bulge,puncture')
    expect(toggled('bulge,puncture', 'bulge')).toBe('puncture')
  })
})
