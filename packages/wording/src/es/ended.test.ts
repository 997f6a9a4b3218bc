import { expect, it } from 'vitest'
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
