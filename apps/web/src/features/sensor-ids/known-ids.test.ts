import { blankOrder } from '@bayledger/ledger/state'
import { describe, expect, it } from 'vitest'
import { expectedIds, idsElsewhere, knownIds, oldIds } from './known-ids.ts'

const order = blankOrder('shop', 'order')
const heard = { sensor: { reading: { answer: 'answered', id: '1A2B3C13' } } }
const arrived = (module: object) =>
  ({ ...order, arrival: { ...order.arrival, wheels: { RF: heard }, module } }) as unknown as typeof order

describe('the IDs that an order knows', () => {
  it('are hexadecimal, also where the vehicle writes its own in decimal', () => {
    const state = arrived({ notation: 'decimal', ids: { LF: '439041042', RF: '0439041043' } })
    expect(knownIds(state, 'LF')).toEqual([
      { id: '1A2B3C12', says: 'same as stored' },
      { id: '1A2B3C13', says: 'right front, same as stored' },
    ])
  })

  it('are as stored where the notation is hexadecimal or was not noted', () => {
    for (const notation of ['hex', null])
      expect(oldIds(arrived({ notation, ids: { LF: '439041042' } }), 'LF')).toEqual([
        { id: '439041042', says: 'same as stored' },
      ])
  })

  it('leave out what cannot be in the notation it is said to be in', () => {
    expect(oldIds(arrived({ notation: 'decimal', ids: { LF: '1A2B3C12' } }), 'LF')).toEqual([])
  })

  it('of the old sensor are those stored for its wheel and heard there', () => {
    expect(oldIds(arrived({ notation: 'hex', ids: { RF: '9F003C13' } }), 'RF')).toEqual([
      { id: '9F003C13', says: 'same as stored' },
      { id: '1A2B3C13', says: 'as heard on arrival' },
    ])
    expect(oldIds(order, 'RR')).toEqual([])
  })
})

describe('the IDs of one wheel and of the others', () => {
  const stored = arrived({ notation: 'hex', ids: { LF: '1A2B3C12', RF: '1A2B3C13', RR: '1A2B3C14' } })
  const worked = (work: object) => ({ ...stored, work }) as unknown as typeof order

  it('expect what was programmed, else what the wheel that is there now came with', () => {
    expect(expectedIds(stored, 'LF')).toEqual([{ id: '1A2B3C12', says: 'same as stored' }])
    expect(expectedIds(worked({ RR: { programmed: { sensorId: '5D00AA01' } } }), 'RR')).toEqual([
      { id: '5D00AA01', says: 'as programmed' },
    ])
    expect(expectedIds(worked({ LF: { mounted: { cameFrom: 'RR' } } }), 'LF')).toEqual([
      { id: '1A2B3C14', says: 'same as stored' },
    ])
  })

  it('expect at the spare’s place the wheel that was stowed there in a rotation of five, once it is', () => {
    const step = { stepKey: 'SP.wheel.stow', code: 'stow-spare', wheel: 'SP', comesFrom: 'LF' }
    const rotated = (closed: object) =>
      ({ ...stored, plan: { plan: { steps: [step] } }, closed }) as unknown as typeof order
    expect(expectedIds(rotated({}), 'SP')).toEqual([])
    expect(expectedIds(rotated({ 'SP.wheel.stow': {} }), 'SP')).toEqual([
      { id: '1A2B3C12', says: 'same as stored' },
    ])
  })

  it('name for a wheel in hand every ID that is in use elsewhere, old and new', () => {
    const ids = idsElsewhere(worked({ RF: { fitted: { sensorId: '5D00AA01' } } }), 'RR')
    expect([...new Set(ids.map(({ wheel, id }) => `${wheel} ${id}`))]).toEqual([
      'LF 1A2B3C12',
      'RF 5D00AA01',
      'RF 1A2B3C13',
    ])
  })
})
