/**
 * Source: 49 U.S.C. 30122(b), and how an agency's chief counsel read it in a letter to the trade of 22 November 2011,
 * as the trade press quotes it: what was dead on arrival may be replaced by a plain stem; wheels without sensors on a
 * vehicle whose system works may not go on; a good sensor broken in the shop keeps the vehicle there until it is
 * replaced; that the lamp lights later is no violation of itself. Guidance, not binding; no legal advice.
 */
import { sealGate } from '@bayledger/ledger/questions/gates'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { noDangers } from '@bayledger/reckoning/job-plan/tire-dangers'
import { roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { expect, it } from 'vitest'
import { oneSensorJob } from '../../packages/ledger/test-support/one-sensor-job.ts'
import {
  attemptEstimate,
  bay,
  desk,
  plainStem,
  workedBy,
} from '../../packages/ledger/test-support/refusals/setting.ts'
import { wordsOf } from '../../packages/ledger/test-support/seeded-ids.ts'
import { tarn } from '../../packages/ledger/test-support/tarn.ts'
import { howOf } from '../../packages/reckoning/test-support/in-words.ts'
import { published } from './published.ts'

/** In this order the right rear sensor is silent on arrival after three tries; the other three answer. */
const plainStemsAt = (...wheels: readonly WheelPosition[]) => attemptEstimate(workedBy(wheels.map(plainStem)))

published(
  {
    document: 'Chief counsel on 49 U.S.C. 30122(b), letter to the tire trade',
    edition: '22 November 2011',
    certainty: 'quoted',
  },
  () => {
    it('a plain stem may take the place of a sensor that was dead on arrival', () => {
      expect(plainStemsAt('RR').admitted).toBe(true)
    })

    it.each(['LF', 'RF', 'LR'] as const)(
      'a plain stem may not take the place of the %s sensor, which works',
      (wheel) => {
        expect(plainStemsAt(wheel)).toMatchObject({ admitted: false, code: 'ESTIMATE_SENSOR_SILENCED' })
      },
    )

    it('one dead sensor does not let the other three be disabled', () => {
      const verdict = plainStemsAt(...roadPositions)
      expect(verdict).toMatchObject({
        admitted: false,
        code: 'ESTIMATE_SENSOR_SILENCED',
        values: { wheels: ['LF', 'RF', 'LR'] },
      })
    })

    it.each(roadPositions)(
      'a %s wheel without a sensor stops a change of wheels where the system works',
      (wheel) => {
        const { steps } = planJob(
          tarn,
          [{ work: { kind: 'swap-wheels' }, bundleKey: 'wheels' }],
          1,
          noDangers,
        )
        const read = steps.find(({ stepKey }) => stepKey === `${wheel}.other.read`)
        expect(read && howOf(read)).toMatch(/No sensor, or silent twice: stop/)
        expect(read?.needs).toContain('value')
        for (const { closedBy, waitsFor } of steps)
          if (closedBy === 'wheel.removed') expect(waitsFor).toContain(`${wheel}.other.read`)
      },
    )

    it.each(['LF', 'RF', 'LR'] as const)(
      'a %s sensor broken in the shop keeps the vehicle there',
      (wheel) => {
        const pen = oneSensorJob('worked')
        expect(sealGate(pen.state())).toEqual([])
        pen.write('sensor.broken', { wheel, how: 'the shovel caught it' }, bay)
        expect(sealGate(pen.state()).map((reason) => [reason.code, reason.wheel])).toEqual([
          ['sensor-broken', wheel],
        ])
        expect(
          pen.attempt('order.withdrawn', { reason: 'customer', words: wordsOf('why') }, desk),
        ).toMatchObject({ admitted: false, code: 'SENSOR_BROKEN_OPEN' })
      },
    )
  },
)
