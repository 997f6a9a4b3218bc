import { describe, expect, it } from 'vitest'
import type { Row } from './rows.ts'
import { noPlaceIn, scanPlace } from './scan-place.ts'

const listedParts = ['TS-315-C']
const id = (key: string, label: string): Row => ({
  kind: 'text',
  key,
  label,
  scan: { wanted: 'sensor-id', listedParts },
})
const part: Row = { kind: 'text', key: 'part', label: 'Part number', scan: { wanted: 'part', listedParts } }
const pressure: Row = { kind: 'number', key: 'pressure', label: 'Pressure', unit: 'psi', low: 0, high: 150 }
const rows = [pressure, id('id.LF', 'Stored for LF'), id('id.RF', 'Stored for RF'), part]

describe('a scan goes into', () => {
  it('the current row where it fits, even if that one is answered', () => {
    const form = { rows, values: { 'id.RF': '1A2B3C11' }, active: 'id.RF' }
    expect(scanPlace(form, '1A2B3C12')).toMatchObject({ row: { key: 'id.RF' }, value: '1A2B3C12' })
  })

  it('the first row without an answer that it fits, whatever row is current', () => {
    const form = { rows, values: { 'id.LF': '1A2B3C10' }, active: 'pressure' }
    expect(scanPlace(form, '1A2B3C11')).toMatchObject({ row: { key: 'id.RF' } })
    expect(scanPlace(form, 'ts-315-c')).toMatchObject({ row: { key: 'part' }, value: 'TS-315-C' })
  })

  it('no row that is answered and not current', () => {
    const form = { rows, values: { 'id.LF': '1A2B3C10', 'id.RF': '1A2B3C11' }, active: 'pressure' }
    expect(scanPlace(form, '1A2B3C12')).toBeNull()
    expect(noPlaceIn(form, '1A2B3C12')).toBe(
      'Stored for LF is filled in already. Tap it, then scan it again.',
    )
  })

  it('no row that is for something else, and the words say what it is', () => {
    const form = { rows: rows.slice(0, 3), values: {}, active: 'pressure' }
    expect(scanPlace(form, 'I1ZZ12AB4XR0000004')).toBeNull()
    expect(noPlaceIn(form, 'I1ZZ12AB4XR0000004')).toBe('This is a VIN. Scan the label of the sensor.')
    expect(noPlaceIn({ rows: [pressure], values: {}, active: 'pressure' }, '1A2B3C12')).toBe(
      'Nothing on this screen takes "1A2B3C12". Open the field that it is for, then scan it again.',
    )
  })
})
