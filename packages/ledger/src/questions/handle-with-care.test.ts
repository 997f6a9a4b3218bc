import { describe, expect, it } from 'vitest'
import { oneSensorJob, tireOf } from '../../test-support/one-sensor-job.ts'
import { bay, desk } from '../../test-support/refusals/setting.ts'
import { wordsOf } from '../../test-support/seeded-ids.ts'
import { handleWithCare } from './handle-with-care.ts'
import { nextMoves } from './moves.ts'

describe('a tire to handle with care', () => {
  it('is named from the write-up on, beside whatever the order waits for', () => {
    const pen = oneSensorJob('written-up', 'care')
    pen.write(
      'complaint.recorded',
      {
        words: wordsOf('complaint'),
        reportedLight: null,
        events: [
          { kind: 'sealant', happened: true, wheel: 'LR' },
          { kind: 'driven-low', happened: true },
          { kind: 'collision', happened: true, wheel: 'LF' },
        ],
      },
      desk,
    )
    expect(handleWithCare(pen.state())).toEqual([
      { danger: 'sealant', wheels: ['LR'] },
      { danger: 'run-low', wheels: [] },
    ])
    const moves = nextMoves(pen.state(), pen.now())
    expect(moves[0]?.code).not.toBe('handle-with-care')
    expect(moves.filter(({ code }) => code === 'handle-with-care')).toHaveLength(2)
  })

  it('is named where it was seen on arrival, and not where it was denied', () => {
    const pen = oneSensorJob('checked', 'care')
    expect(handleWithCare(pen.state())).toEqual([])
    pen.write('tire.inspected', tireOf('RF', { sealantSeen: true, tireDamage: ['run-low-dust'] }), bay)
    expect(handleWithCare(pen.state())).toEqual([
      { danger: 'sealant', wheels: ['RF'] },
      { danger: 'run-low', wheels: ['RF'] },
    ])
  })
})
