import type { ReceiptWording } from '../receipt.ts'

export const receipt: ReceiptWording = {
  title: 'Receipt',
  of: (customer, order, vehicle) => `For ${customer}. Order ${order}, ${vehicle}.`,
  paid: (amount, method, at) => `You paid ${amount} (${method}) on ${at}.`,
  givenBack: (amount, method, at, why) =>
    `We gave you back ${amount} (${method}) on ${at}. The reason: ${why}`,
  kept: (amount) => `In all you have paid ${amount}.`,
}
