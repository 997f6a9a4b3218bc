import type { ReceiptWording } from '../receipt.ts'
import { ended } from './ended.ts'

export const receipt: ReceiptWording = {
  title: 'Recibo',
  of: (customer, order, vehicle) => `Para ${customer}. Orden ${order}, ${vehicle}.`,
  paid: (amount, method, at) => ended(`Usted pagó ${amount} (${method}) el ${at}`),
  givenBack: (amount, method, at, why) =>
    `${ended(`Le devolvimos ${amount} (${method}) el ${at}`)} El motivo: ${why}`,
  kept: (amount) => `En total usted ha pagado ${amount}.`,
}
