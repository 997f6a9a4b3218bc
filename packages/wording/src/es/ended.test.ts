import { expect, it } from 'vitest'
import { letterText } from '../messages.ts'
import { customerEstimate } from './customer-estimate.ts'
import { customerPage } from './customer-page.ts'
import { messages } from './messages.ts'
import { ready } from './ready.ts'
import { receipt } from './receipt.ts'

it('ends a sentence in one period, also after "p.m."', () => {
  expect(receipt.paid('$40.00', 'efectivo', '29 nov, 8:41 p.m.')).toBe(
    'Usted pagó $40.00 (efectivo) el 29 nov, 8:41 p.m.',
  )
  expect(receipt.paid('$40.00', 'efectivo', '29 nov')).toBe('Usted pagó $40.00 (efectivo) el 29 nov.')
  expect(receipt.givenBack('$15.00', 'efectivo', '8:41 p.m.', 'Cobro doble')).toBe(
    'Le devolvimos $15.00 (efectivo) el 8:41 p.m. El motivo: Cobro doble',
  )
})

it('has no second period after a time, in whatever a customer reads', () => {
  const [earlier, time] = ['3:10 p.m.', '8:41 p.m.']
  const of = { name: 'Jo', vehicle: 'auto', shop: 'Taller', telephone: null, link: null, lines: [time] }
  const said = [
    customerPage.report.sealed('T-1-R1', '29 nov', time),
    customerEstimate.ready(time),
    customerEstimate.answered.next({ work: 'to-begin', owes: true, ready: time, mayDrive: true }),
    letterText(messages, 'new-time', of, null),
    messages.texts['new-time'](of),
    ready.about(time),
    ready.afterPart({ when: time, part: earlier }),
    ready.later({ vehicle: 'auto', when: time, promised: earlier }),
  ]
  for (const sentence of said) expect(sentence).toMatch(/8:41 p\.m\.(?!\.)/)
  expect(said.join('\n')).not.toContain('..')
})
