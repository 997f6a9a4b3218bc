import { customerWords as english } from '@bayledger/wording/en/customer-words'
import { customerWords as spanish } from '@bayledger/wording/es/customer-words'
import { describe, expect, it } from 'vitest'
import { CallProblem, type ProblemBody } from '../../lib/problem.ts'
import { customerProblem, isOutOfDate } from './customer-problem.ts'

const thrown = (body: Pick<ProblemBody, 'code'> & Partial<ProblemBody>) =>
  new CallProblem({ title: 'The link is unknown', detail: 'Open the newest link.', status: 401, ...body })

describe('a problem on the customer’s page', () => {
  it('is said in the server’s own words in English', () => {
    expect(customerProblem(english, thrown({ code: 'LINK_REFUSED' })).title).toBe('The link is unknown')
  })

  it.each([
    ['LINK_REFUSED', {}, 'El enlace no se conoce, se venció o fue retirado'],
    ['UNREACHABLE', { status: 0 }, 'El servidor del taller no responde.'],
    ['REPLY_UNREADABLE', { status: 502 }, 'La respuesta no vino del servidor del taller.'],
    ['TOO_MANY_REQUESTS', { retryAfterSeconds: 20 }, 'Demasiados intentos en poco tiempo'],
    ['ENTRY_REFUSED', { reason: 'SHOWN_MISSING' }, 'El presupuesto cambió'],
    ['ENTRY_REFUSED', { reason: 'BUNDLE_ALREADY_DECIDED' }, 'Usted ya contestó'],
    ['ENTRY_REFUSED', { reason: 'SIGNATURE_OF_ANOTHER' }, 'La firma tiene otro nombre'],
    ['ORDER_READ_ONLY', {}, 'No se puede agregar nada a esta orden'],
    ['INTERNAL_FAULT', { requestId: 'r-1' }, 'Esto no funcionó'],
  ] as const)('is worded by its code in Spanish: %s %j', (code, rest, title) => {
    const said = customerProblem(spanish, thrown({ code, ...rest }))
    expect(said.title).toBe(title)
    expect(said.detail).toMatch(/^[A-ZÁÉÍÓÚ].*\.$/)
    if ('requestId' in rest) expect(said.requestId).toBe('r-1')
  })

  it('is mended by loading the page again where the estimate or the answer is another than it shows', () => {
    const refused = (reason: string) => isOutOfDate(thrown({ code: 'ENTRY_REFUSED', reason }))
    expect(refused('ESTIMATE_REVISION_STALE')).toBe(true)
    expect(refused('BUNDLE_ALREADY_DECIDED')).toBe(true)
    expect(refused('SIGNATURE_OF_ANOTHER')).toBe(false)
    expect(isOutOfDate(thrown({ code: 'UNREACHABLE', status: 0 }))).toBe(false)
  })

  it('names the seconds to wait, and says of what is no reply that the page failed', () => {
    const wait = thrown({ code: 'TOO_MANY_REQUESTS', retryAfterSeconds: 20 })
    expect(customerProblem(spanish, wait).detail).toBe('Espere 20 segundos y luego intente otra vez.')
    expect(customerProblem(spanish, new Error('chunk')).title).toBe('Esta página no se pudo mostrar.')
  })
})
