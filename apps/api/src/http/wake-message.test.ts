import { expect, it } from 'vitest'
import { fromMessage, type Gathered, toMessage } from './wake-message.ts'

const shopId = '019bb1f0-da34-7c80-aa76-6e5bb93d8f16'
const orderId = (index: number) => `019bb1f0-0000-7c80-aa76-${String(index).padStart(12, '0')}`
const gathered = (count: number, tray = false): Gathered => ({
  orders: new Map(Array.from({ length: count }, (_, index) => [orderId(index), index + 1])),
  tray,
})

it('names the orders that moved, and whether the tray did', () => {
  expect(fromMessage(toMessage(shopId, gathered(2)))).toEqual({
    shopId,
    wake: {
      all: false,
      orders: [
        { orderId: orderId(0), seq: 1 },
        { orderId: orderId(1), seq: 2 },
      ],
      tray: false,
    },
  })
  expect(fromMessage(toMessage(shopId, gathered(0, true)))?.wake).toEqual({
    all: false,
    orders: [],
    tray: true,
  })
})

it('names all where too many moved, and never outgrows what a message may hold', () => {
  expect(fromMessage(toMessage(shopId, gathered(151)))?.wake).toMatchObject({ all: true, orders: [] })
  expect(toMessage(shopId, gathered(150, true)).length).toBeLessThan(8_000)
})

it('takes nothing from a message of another form', () => {
  expect(fromMessage('')).toBeNull()
  expect(fromMessage(shopId)).toBeNull()
})
