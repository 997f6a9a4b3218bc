import type { ReportMoneyWording } from '../../report/money.ts'
import { reportDone } from './done.ts'

export const reportMoney: ReportMoneyWording = {
  title: 'Price and payments',
  totals: (price, paid, open, givenBack) => `${reportDone.price(price, paid, givenBack)} Open: ${open}.`,
  noEstimate: 'No estimate was made.',
  nothingAuthorized: 'Nothing on the estimate was authorized.',
  prices: {
    caption: 'What you said Yes to',
    columns: { work: 'Work', line: 'Line', price: 'Price' },
  },
  tax: 'Tax',
  total: 'Total with tax',
  exempt: (certificate) => `Exempt from sales tax, certificate ${certificate}.`,
  look: { work: 'Inspection', line: 'as agreed before it began, with tax' },
  noPayment: 'No payment was noted before this report.',
  payments: {
    caption: 'Payments',
    columns: { how: 'How', amount: 'Amount', by: 'Noted by' },
  },
  givenBack: (method, why) => `given back, ${method}: ${why}`,
  methods: {
    cash: 'cash',
    card: 'card',
    check: 'check',
    account: 'on account',
    'none-due': 'nothing due',
  },
}
