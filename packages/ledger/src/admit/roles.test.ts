import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { seal } from '../../test-support/money.ts'
import { oneSensorJob } from '../../test-support/one-sensor-job.ts'
import { orderPen } from '../../test-support/order-pen.ts'
import { idOf, wordsOf } from '../../test-support/seeded-ids.ts'
import type { Appended } from '../append.ts'
import type { Entry } from '../entry.ts'
import { definitionOf, type Kind, kindNames, type PayloadOf } from '../registry.ts'
import { type Role, roles } from '../role.ts'
import { upcast } from '../upcast.ts'

const folder = `${import.meta.dirname}/../frozen`
const entries = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .flatMap((file) => JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')) as Entry[])
  .map(upcast)

const payloadOf = <K extends Kind>(kind: K): PayloadOf<K> => {
  const entry = entries.find((candidate) => candidate.kind === kind)
  if (!entry) throw new RangeError(`the frozen ledgers hold no ${kind}`)
  return entry.payload as PayloadOf<K>
}

/** A person with these roles tries to write a payload that some shop once wrote. */
const attempt = <K extends Kind>(
  kind: K,
  held: readonly Role[],
  payload: PayloadOf<K> = payloadOf(kind),
): Appended => {
  const pen = kind === 'order.opened' ? orderPen() : oneSensorJob('written-up')
  const person = { id: idOf(`staff/${held.join('+')}`), roles: held }
  return pen.attempt(kind, payload, { by: person, facts: { staff: new Map([[person.id, held]]) } })
}

const refusedForRole = (appended: Appended): boolean =>
  !appended.admitted && appended.code === 'ROLE_NOT_ALLOWED'

/** What people write; the job plan is the server's own. */
const staffKinds = kindNames.filter((kind) => kind !== 'plan.issued')

describe.each(staffKinds)('%s', (kind) => {
  const allowed = definitionOf(kind).roles
  it(`is written by ${allowed.join(', ')} and by nobody else`, () => {
    for (const role of roles)
      expect([role, refusedForRole(attempt(kind, [role]))]).toEqual([role, !allowed.includes(role)])
  })
})

describe('roles', () => {
  it('count each: whoever holds two may do what either may', () => {
    const check = payloadOf('torque.checked')
    expect(refusedForRole(attempt('torque.checked', ['owner'], check))).toBe(true)
    expect(refusedForRole(attempt('torque.checked', ['advisor'], check))).toBe(true)
    expect(refusedForRole(attempt('torque.checked', ['owner', 'technician'], check))).toBe(false)
  })

  it('are somebody’s for every kind that people write, and nobody’s for the job plan', () => {
    expect(staffKinds.filter((kind) => definitionOf(kind).roles.length === 0)).toEqual([])
    expect(definitionOf('plan.issued').roles).toEqual([])
  })

  it('let advisor, manager and owner take money, and manager and owner give it back', () => {
    const taken = { money: seal({ amountCents: 20_340 }), method: 'card' as const, back: null }
    const givenBack = {
      ...taken,
      money: seal({ amountCents: -20_340 }),
      back: { why: wordsOf('why'), of: [] },
    }
    const may = (payload: PayloadOf<'payment.noted'>) =>
      roles.filter((role) => {
        const result = attempt('payment.noted', [role], payload)
        return result.admitted || !['ROLE_NOT_ALLOWED', 'REFUND_NOT_ALLOWED'].includes(result.code)
      })
    expect(may(taken)).toEqual(['advisor', 'manager', 'owner'])
    expect(may(givenBack)).toEqual(['manager', 'owner'])
  })
})
