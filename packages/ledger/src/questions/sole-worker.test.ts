import { describe, expect, it } from 'vitest'
import { before, closeStep } from '../../test-support/refusals/setting.ts'
import { advisor, colleague, lead, technician } from '../../test-support/shop.ts'
import type { Role } from '../role.ts'
import { checkedAlone, isSoleWorker } from './sole-worker.ts'

const author = { kind: 'staff' as const, staffId: technician.id }
const staffOf = (...people: readonly (readonly [{ readonly id: string }, readonly Role[]])[]) => ({
  staff: new Map(people.map(([{ id }, roles]) => [id, roles])),
})

describe('a sole worker', () => {
  it('is whoever works in the bay alone, whoever else is at the desk', () => {
    expect(isSoleWorker(author, staffOf([technician, ['owner', 'technician']]))).toBe(true)
    expect(isSoleWorker(author, staffOf([technician, ['technician']], [advisor, ['advisor', 'owner']]))).toBe(
      true,
    )
    expect(isSoleWorker(author, staffOf([technician, ['technician']], [lead, ['lead']]))).toBe(false)
    expect(isSoleWorker(author, staffOf([technician, ['technician']], [colleague, ['technician']]))).toBe(
      false,
    )
  })

  it('checks their own torque after five minutes, and the order remembers that nobody else did', () => {
    const pen = before('RR.studs.second-check')
    const alone = { by: technician, facts: staffOf([technician, ['owner', 'technician']]) }
    // Fifteen drafts of twenty seconds each.
    for (let waits = 0; waits < 15; waits += 1)
      pen.draft('note.added', { words: '0'.repeat(64) }, { by: technician })
    expect(closeStep(pen, 'RR.studs.second-check', {}, alone)).toMatchObject({ admitted: true })
    expect(checkedAlone(pen.state())).toEqual(['RR'])
  })

  it('is nobody where another person checked', () => {
    const pen = before('RR.studs.second-check')
    closeStep(pen, 'RR.studs.second-check', {}, { by: lead })
    expect(pen.state().work.RR?.checked).not.toBeNull()
    expect(checkedAlone(pen.state())).toEqual([])
  })
})
