import { english } from '@bayledger/wording/en/english'
import { keptMoney } from '../../ledger/test-support/money.ts'
import { wordsOf } from '../../ledger/test-support/seeded-ids.ts'
import { advisor, lead, technician } from '../../ledger/test-support/shop.ts'
import type { ReportContext } from '../src/compose-content.ts'

export const reportContext: ReportContext = {
  language: english,
  reportNumber: 'R-2602-1',
  composedAt: '2026-01-12T17:52:00.000Z',
  timeZone: 'America/New_York',
  checkAddress: 'https://desk.tamber.example/check',
  sealKey: null,
  stamp: null,
  templateVersion: 1,
  supersedes: null,
  shop: {
    name: 'Tamber Street Tire & Wheel',
    lines: ['14 Tamber Street, Brindle Falls'],
    telephone: '+15555550100',
  },
  vehicle: { description: 'Vantrell Tarn utility 2016', plate: 'BRF 6083', vinLastSix: '151931' },
  customerName: 'W. Dunmore-Gray',
  texts: {
    [wordsOf('complaint')]: 'It flashes for a minute, then the light stays on. Third time this week.',
    [wordsOf('owner')]: 'W. Dunmore-Gray',
    [wordsOf('why')]: 'The customer does not want it done.',
  },
  staff: { [advisor.id]: 'Ottoline Pask', [technician.id]: 'Rufus Kettleby', [lead.id]: 'Greta Lund-Sorrel' },
  money: keptMoney,
  photosReceived: new Set(),
  pictures: new Map(),
}
