import { describe, expect, it } from 'vitest'
import { keptMoney } from '../../test-support/money.ts'
import {
  answersOf,
  decisionOf,
  issuePlan,
  oneSensorJob,
  workUntil,
} from '../../test-support/one-sensor-job.ts'
import type { OrderPen } from '../../test-support/order-pen.ts'
import { desk } from '../../test-support/refusals/setting.ts'
import { wordsOf } from '../../test-support/seeded-ids.ts'
import { linkId } from '../../test-support/shop.ts'
import { answerable, newestBundles } from './answers.ts'
import { openSteps, sealGate } from './gates.ts'
import { dueCents } from './money.ts'
import { nextMoves } from './moves.ts'
import { workBegan } from './work-began.ts'

const sensor = (pen: OrderPen) => {
  const [bundle] = newestBundles(pen.state())
  if (!bundle) throw new RangeError('nothing is offered')
  return bundle
}

/** The customer says No to the sensor after a Yes; the server then writes the plan. */
const takeBack = (pen: OrderPen, how: 'desk' | 'link'): void => {
  const { id } = pen.write(
    'estimate.decided',
    decisionOf(
      pen,
      answersOf(pen, 'declined'),
      how === 'desk'
        ? {}
        : { consent: { channel: 'link', linkId, signature: { form: 'typed', digest: wordsOf('name') } } },
    ),
    how === 'desk' ? desk : { by: { linkId } },
  )
  issuePlan(pen, id)
}

describe('a Yes', () => {
  it.each(['desk', 'link'] as const)(
    'that nobody worked on is taken back by the %s, and its plan is empty',
    (how) => {
      const pen = oneSensorJob('decided')
      expect(answerable(pen.state(), sensor(pen))).toBe('no-only')
      expect(dueCents(pen.state(), keptMoney)).toBe(20_340)
      takeBack(pen, how)
      const state = pen.state()
      expect(state.answers['sensor.RR']).toMatchObject({
        answer: 'declined',
        takesBack: { by: { kind: 'staff' } },
      })
      expect(openSteps(state)).toEqual([])
      expect(dueCents(state, keptMoney)).toBe(5_200)
      expect(sealGate(state)).toEqual([])
      expect(nextMoves(state, pen.now())[0]?.mover).toBe('desk')
      expect(answerable(state, sensor(pen))).toBe('yes-only')
    },
  )

  it('is not work while only a figure was confirmed, and is once a part was drawn', () => {
    const pen = oneSensorJob('decided')
    const [first] = openSteps(pen.state())
    workUntil(pen, (stepKey) => stepKey !== first?.stepKey)
    expect(workBegan(pen.state(), sensor(pen))).toMatchObject({ why: 'step' })
    expect(answerable(pen.state(), sensor(pen))).toBe('no')
  })

  it('is taken back once the entry of a step that was not done is withdrawn', () => {
    const pen = oneSensorJob('decided')
    const [first] = openSteps(pen.state())
    workUntil(pen, (stepKey) => stepKey !== first?.stepKey)
    const closing = pen.entries().at(-1)
    pen.write(
      'entry.struck',
      { entryId: closing?.id ?? '', reason: 'not-done', words: null, secondPerson: null },
      desk,
    )
    expect(answerable(pen.state(), sensor(pen))).toBe('no-only')
    takeBack(pen, 'desk')
    expect(openSteps(pen.state())).toEqual([])
  })

  it('comes back after it was taken back, and the job is done as if nothing had been', () => {
    const pen = oneSensorJob('decided')
    takeBack(pen, 'desk')
    const { id } = pen.write('estimate.decided', decisionOf(pen, answersOf(pen, 'authorized')), desk)
    issuePlan(pen, id)
    workUntil(pen, () => false)
    expect(sealGate(pen.state())).toEqual([])
    expect(pen.state().answers['sensor.RR']).toMatchObject({ answer: 'authorized', takesBack: null })
  })
})
