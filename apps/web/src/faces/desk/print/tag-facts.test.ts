import { fold } from '@bayledger/ledger/fold'
import { authorizedWorks } from '@bayledger/ledger/questions/authorized-works'
import type { OrderState } from '@bayledger/ledger/state'
import { describe, expect, it } from 'vitest'
import { demoCalendar } from '../../../../../../prisma/seeds/demo/calendar.ts'
import { demoShop } from '../../../../../../prisma/seeds/demo-shop.ts'
import { yearOfOrders } from '../../../../../../prisma/seeds/year.ts'
import { tagsOf } from './tag-facts.ts'

const now = '2026-01-12T16:40:00.000Z'

/** The first order of the year in which the wheels change places. */
const rotated = (): OrderState => {
  for (const { entries } of yearOfOrders(demoCalendar(now))) {
    const state = fold(entries)
    if (authorizedWorks(state).some(({ work }) => work.kind === 'rotate')) return state
  }
  throw new Error('nothing is rotated in the year')
}

describe('the tags of an order', () => {
  it('name torque with its source, sensor and label pressure of each road wheel', () => {
    const order = demoShop(now).orders.find(({ number }) => number === 'T-2616')
    const tags = tagsOf(fold(order?.entries ?? []))
    const torque = {
      figure: '160 N·m',
      source: 'maker manual, Pellowe Dunnock 2021 service book, wheels, page 2',
    }
    expect(tags).toEqual([
      { from: 'LF', to: 'LF', torque, sensorId: '7E41C20B', pressurePsi: 36 },
      { from: 'RF', to: 'RF', torque, sensorId: '7E41C3D6', pressurePsi: 36 },
      { from: 'RR', to: 'RR', torque, sensorId: '7E41BF72', pressurePsi: 42 },
      { from: 'LR', to: 'LR', torque, sensorId: '7E41C488', pressurePsi: 42 },
    ])
  })

  it('say where a wheel goes that is rotated, with the label pressure of that place', () => {
    expect(tagsOf(rotated()).map(({ from, to, pressurePsi }) => [from, to, pressurePsi])).toEqual([
      ['LF', 'LR', 42],
      ['RF', 'RR', 42],
      ['RR', 'RF', 36],
      ['LR', 'LF', 36],
    ])
  })
})
