import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { oneSensorJob } from '../test-support/one-sensor-job.ts'
import { orderPen } from '../test-support/order-pen.ts'
import { type Command, commands, tryCommand } from '../test-support/random-order.ts'
import { technician } from '../test-support/shop.ts'
import { closingOf } from '../test-support/step-payload.ts'
import { roadGate } from './questions/gates.ts'
import { TroubleKind } from './subjects/trouble/kinds.ts'

const job = oneSensorJob('worked', 'parked').entries()
const planned = job.findIndex(({ kind }) => kind === 'plan.issued') + 1

/** What might put a trouble right, or say that there was none: the customer's answer, another part, a withdrawal. */
const settles: ReadonlySet<Command['does']> = new Set(['decide', 'estimate', 'withdraw'])

describe('a wheel at which something is not right', () => {
  it('is never torqued and never driven on without a decision or another part, whatever people try', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: planned, max: job.length }).map((end) => job.slice(0, end)),
        fc.constantFrom(...TroubleKind.options),
        commands,
        (entries, what, tries) => {
          const pen = orderPen('parked', entries)
          pen.write('trouble.found', { stepKey: null, wheel: 'RR', what, words: null }, { by: technician })
          for (const command of tries) {
            const step = pen
              .state()
              .plan?.plan.steps.find((one) => one.closedBy === 'part.drawn' && one.wheel === 'RR')
            const isPartNext = step !== undefined && pen.state().closed[step.stepKey] === undefined
            if (settles.has(command.does) || (isPartNext && command.does.endsWith('-step'))) continue
            tryCommand(pen, command)
            const state = pen.state()
            for (const one of state.plan?.plan.steps ?? []) {
              const onHub =
                one.wheel === 'RR' &&
                ['wheel.mounted', 'studs.torqued', 'torque.checked'].includes(one.closedBy)
              if (!onHub && one.closedBy !== 'drive.done') continue
              const { kind, payload } = closingOf(state, one)
              expect(pen.attempt(kind, payload, { by: technician }).admitted, one.stepKey).toBe(false)
            }
            expect(roadGate(state).map(({ code, wheel }) => `${code} ${wheel}`)).toContain('wheel-parked RR')
          }
        },
      ),
      { seed: 20_260_112, numRuns: 60 },
    )
  }, 120_000)
})
