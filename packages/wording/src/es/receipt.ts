import type { ReceiptWording } from '../receipt.ts'

export const receipt: ReceiptWording = {
  title: 'Recibo',
  of: (customer, order, vehicle) => `Para ${customer}. Orden ${order}, ${vehicle}.`,
  paid: (amount, method, at) => `Usted pagó ${amount} (${method}) el ${at}.`,
  givenBack: (amount, method, at, why) => `Le devolvimos ${amount} (${method}) el ${at}. El motivo: ${why}`,
  kept: (amount) => `En total usted ha pagado ${amount}.`,
}
