import type { ReportMoneyWording } from '../../report/money.ts'
import { reportDone } from './done.ts'

export const reportMoney: ReportMoneyWording = {
  title: 'Precio y pagos',
  totals: (price, paid, open, givenBack) => `${reportDone.price(price, paid, givenBack)} Por pagar: ${open}.`,
  noEstimate: 'No se hizo presupuesto.',
  nothingAuthorized: 'No se autorizó nada del presupuesto.',
  prices: {
    caption: 'A lo que usted dijo Sí',
    columns: { work: 'Trabajo', line: 'Línea', price: 'Precio' },
  },
  tax: 'Impuesto',
  total: 'Total con impuesto',
  exempt: (certificate) => `Exento del impuesto sobre la venta, certificado ${certificate}.`,
  look: { work: 'Inspección', line: 'como se acordó antes de empezar, con impuesto' },
  noPayment: 'No se anotó ningún pago antes de este informe.',
  payments: {
    caption: 'Pagos',
    columns: { how: 'Cómo', amount: 'Cantidad', by: 'Lo anotó' },
  },
  givenBack: (method, why) => `devuelto, ${method}: ${why}`,
  methods: {
    cash: 'efectivo',
    card: 'tarjeta',
    check: 'cheque',
    account: 'a cuenta',
    'none-due': 'nada por pagar',
  },
}
