import { blankOrder } from '@bayledger/ledger/state'
import { describe, expect, it } from 'vitest'
import { rowsOpen } from '../form/rows.ts'
import { laidOut, moduleReadOf, moduleRows, rowsAsRead } from './module-rows.ts'

const order = blankOrder('shop', 'order')
const keys = (values: Record<string, string | null>) =>
  moduleRows(order, values, 'arrival', []).map(({ key }) => key)

describe('the form for what the vehicle stored', () => {
  it('asks why where nothing can be read, and for no IDs where there are none', () => {
    expect(keys({ state: 'unreadable' })).toEqual(['state', 'why'])
    expect(keys({ state: 'blank' })).toEqual(['state', 'codes'])
  })

  it('asks which wheel a code names only for codes that name one', () => {
    expect(keys({ state: 'blank', codes: 'no-signal,receiver' })).toEqual([
      'state',
      'codes',
      'at.no-signal',
      'codeText',
    ])
  })

  it('makes one code of each wheel, and one without a wheel where none is named', () => {
    const read = moduleReadOf(order, {
      state: 'read',
      notation: 'hex',
      'id.LF': '1A2B3C10',
      'id.RF': null,
      codes: 'no-signal,low-battery,receiver',
      'at.no-signal': 'RR,LF',
      'at.low-battery': 'none',
      codeText: null,
      stray: '0x9F00AA11, 9f00aa12',
    })
    expect(read).toEqual({
      state: 'read',
      notation: 'hex',
      ids: { LF: '1A2B3C10' },
      codes: [
        { class: 'no-signal', wheel: 'LF' },
        { class: 'no-signal', wheel: 'RR' },
        { class: 'low-battery' },
        { class: 'receiver' },
      ],
      strayIds: ['9F00AA11', '9F00AA12'],
      why: null,
    })
  })

  it('keeps a decimal ID as the vehicle shows it, typed or picked from what was heard', () => {
    const sensor = { reading: { answer: 'answered', id: '1A2B3C10' } }
    const heard = { ...order, arrival: { ...order.arrival, wheels: { LF: { sensor } } } } as typeof order
    const values = { state: 'read', notation: 'decimal', 'id.LF': '439041040', 'id.RF': '439041041' }
    const [row] = moduleRows(heard, values, 'arrival', []).filter(({ key }) => key === 'id.LF')
    expect(row).toMatchObject({ suggestions: [{ value: '439041040', label: 'same as heard · 1040' }] })
    expect(moduleReadOf(heard, values)).toMatchObject({
      notation: 'decimal',
      ids: { LF: '439041040', RF: '439041041' },
    })
  })

  it('takes all IDs from one text; one that is typed for a wheel since counts more', () => {
    const values = { state: 'read', all: '1A2B3C10 1A2B3C11 1A2B3C12 1A2B3C13', codes: 'none' }
    expect(
      rowsOpen(moduleRows(order, laidOut(order, values), 'arrival', []), laidOut(order, values)),
    ).toEqual([])
    expect(moduleReadOf(order, values)).toMatchObject({
      notation: 'hex',
      ids: { LF: '1A2B3C10', RF: '1A2B3C11', RR: '1A2B3C12', LR: '1A2B3C13' },
    })
    expect(moduleReadOf(order, { ...values, 'id.RR': '5D00AA01' }).ids.RR).toBe('5D00AA01')
    expect(moduleReadOf(order, { ...values, all: 'LF 1A2B3C10' }).ids).toEqual({ LF: '1A2B3C10' })
  })

  it('offers all as expected by one press after the work, never on arrival', () => {
    const ids = { LF: '1A2B3C10', RF: '1A2B3C11', RR: '1A2B3C12', LR: '1A2B3C13' }
    const module = { state: 'read', notation: 'hex', ids, codes: [], strayIds: [] }
    const stored = { ...order, arrival: { ...order.arrival, module } } as unknown as typeof order
    const worked = { ...stored, work: { RR: { programmed: { sensorId: '5D00AA01' } } } } as typeof order
    const offered = (phase: 'arrival' | 'closing') =>
      moduleRows(worked, { state: 'read' }, phase, []).find(({ key }) => key === 'all')
    expect(offered('arrival')).toMatchObject({ suggestions: [] })
    expect(offered('closing')).toMatchObject({
      suggestions: [{ value: 'LF 1A2B3C10 RF 1A2B3C11 RR 5D00AA01 LR 1A2B3C13' }],
    })
  })

  it('keeps the reason and nothing else where nothing can be read', () => {
    expect(
      moduleReadOf(order, { state: 'unreadable', why: 'no connection', codes: 'receiver' }),
    ).toMatchObject({
      state: 'unreadable',
      ids: {},
      codes: [],
      why: 'no connection',
    })
  })

  it('is filled in with what was read, so that one more thing can be added and nothing is lost', () => {
    const read = {
      state: 'read',
      notation: 'hex',
      ids: { LF: '1A2B3C10', RR: '1A2B3C12' },
      codes: [
        { class: 'no-signal', wheel: 'LF', text: 'as shown' },
        { class: 'receiver', text: 'as shown' },
      ],
      strayIds: ['9F00AA11'],
      why: null,
    } as const
    const given = { ...read, codes: [...read.codes], strayIds: [...read.strayIds] }
    expect(moduleReadOf(order, rowsAsRead(order, given))).toEqual(given)
    expect(rowsAsRead(order, { ...given, codes: [] }).codes).toBe('none')
  })

  it('asks again for codes that each had words of their own', () => {
    const codes = [
      { class: 'receiver', text: 'one' } as const,
      { class: 'lamp-circuit', text: 'two' } as const,
    ]
    const read = { state: 'blank', notation: null, ids: {}, codes, strayIds: [] } as const
    expect(rowsAsRead(order, { ...read, codes: [...codes], strayIds: [] })).toEqual({ state: 'blank' })
  })
})
