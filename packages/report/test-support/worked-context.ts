import type { ReportContext } from '../src/compose-content.ts'
import { workedMoney } from './worked-estimate.ts'
import { advisor, digest, lead, technician } from './worked-people.ts'

export const reportContext: ReportContext = {
  reportNumber: 'R-2602-1',
  composedAt: '2026-01-12T17:52:00.000Z',
  timeZone: 'America/New_York',
  checkAddress: 'https://desk.tamber.example/check',
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
    [digest('a')]: 'It flashes for a minute, then the light stays on. Third time this week.',
    [digest('b')]: 'W. Dunmore-Gray',
  },
  staff: { [advisor]: 'Ottoline Pask', [technician]: 'Rufus Kettleby', [lead]: 'Greta Lund-Sorrel' },
  money: workedMoney,
  photosReceived: new Set(),
}
