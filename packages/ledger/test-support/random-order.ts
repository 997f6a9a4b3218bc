import type { PlanInForce, Step } from '@bayledger/reckoning/step'
import { readingOrder } from '@bayledger/reckoning/wheels'
import fc from 'fast-check'
import type { Appended } from '../src/append.ts'
import { readySteps } from '../src/questions/gates.ts'
import { lastOdometer } from '../src/questions/odometer.ts'
import type { PayloadOf } from '../src/registry.ts'
import {
  answersOf,
  arrivalOf,
  decisionOf,
  findingsOf,
  handBack,
  issuePlan,
  sealOf,
  tireOf,
} from './one-sensor-job.ts'
import type { OrderPen } from './order-pen.ts'
import { changedEstimate } from './refusals/setting.ts'
import { wordsOf } from './seeded-ids.ts'
import { advisor, agreedBy, colleague, gauge, lead, otherTablet, technician, wrench } from './shop.ts'
import { closingOf } from './step-payload.ts'

const people = [technician, colleague, lead, advisor]
const person = fc.constantFrom(...people)
const wheel = fc.constantFrom(...readingOrder)
const position = fc.nat(400)

/** Something that somebody tries, allowed or not: ordinary work, mistakes, and attempts to cheat. */
const command = fc.oneof(
  {
    weight: 60,
    arbitrary: fc.record({ does: fc.constant('next-step' as const), by: person, check: person }),
  },
  {
    weight: 4,
    arbitrary: fc.record({ does: fc.constant('some-step' as const), by: person, at: position, other: wheel }),
  },
  {
    weight: 12,
    arbitrary: fc.record({
      does: fc.constant('some-round' as const),
      by: person,
      at: position,
      clicked: fc.constantFrom(4, 5, 5, 5),
      moved: fc.constantFrom([], [], [2], [9]),
      dueOn: fc.constantFrom('2026-06-15', '2026-06-15', '2026-01-02'),
    }),
  },
  {
    weight: 6,
    arbitrary: fc.record({
      does: fc.constant('withdraw' as const),
      by: person,
      second: person,
      at: position,
    }),
  },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('set-aside' as const), by: person, at: position }) },
  {
    weight: 2,
    arbitrary: fc.record({
      does: fc.constant('read-wheel' as const),
      by: person,
      wheel,
      psi: fc.constantFrom(-30, 9, 32.7, 35),
      silent: fc.boolean(),
    }),
  },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('see-stem' as const), by: person, wheel }) },
  { weight: 2, arbitrary: fc.record({ does: fc.constant('judge' as const), by: person }) },
  {
    weight: 2,
    arbitrary: fc.record({ does: fc.constant('estimate' as const), cents: fc.constantFrom(0, 0, 1) }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      does: fc.constant('decide' as const),
      answer: fc.constantFrom('authorized' as const, 'declined' as const, 'deferred' as const),
    }),
  },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('break-sensor' as const), by: person, wheel }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('seal' as const) }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('hand-back' as const), agreed: person }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('withdraw-order' as const) }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('repeat-id' as const), at: position }) },
)
export type Command = typeof command extends fc.Arbitrary<infer C> ? C : never

export const commands = fc.array(command, { minLength: 20, maxLength: 60, size: 'max' })

const desk = { by: advisor, deviceId: null }

/** Tries one command; `null` if the order has nothing to try it on. */
export const tryCommand = (pen: OrderPen, command: Command): Appended | null => {
  const state = pen.state()
  switch (command.does) {
    case 'next-step': {
      const [step] = readySteps(state)
      if (!step) return null
      const { kind, payload } = closingOf(state, step)
      // Whoever checks seals with their own PIN, on anybody's tablet.
      const said = kind === 'torque.checked' ? { ...payload, checkedBy: agreedBy(command.check) } : payload
      return pen.attempt(kind, said, { by: command.by })
    }
    case 'some-step': {
      const step = pick(state.plan?.plan.steps, command.at)
      if (!step) return null
      const { kind, payload } = closingOf(state, step)
      const slipped =
        command.at % 3 === 0 && 'wheel' in payload ? { ...payload, wheel: command.other } : payload
      return pen.attempt(kind, slipped as PayloadOf<typeof kind>, { by: command.by })
    }
    case 'some-round': {
      const step = pick(torqueStepsOf(state.plan?.plan), command.at)
      if (!step) return null
      const { kind, payload } = closingOf(state, step)
      const { clicked, moved, dueOn } = command
      const changed = { ...payload, clicked, moved, wrench: { ...wrench, dueOn } }
      return pen.attempt(kind, changed as PayloadOf<typeof kind>, { by: command.by })
    }
    case 'withdraw': {
      const target = pick(pen.entries(), command.at)
      return target ? pen.strike(target.id, command.by, command.second) : null
    }
    case 'set-aside': {
      const step = pick(state.plan?.plan.steps, command.at)
      return step
        ? pen.attempt('step.set_aside', { stepKey: step.stepKey, reason: wordsOf('why') }, { by: command.by })
        : null
    }
    case 'read-wheel': {
      const reading = arrivalOf(command.wheel, {
        gauge: { pressure: { value: command.psi, unit: 'psi' }, instrument: gauge },
        ...(command.silent ? { sensor: { answer: 'silent', tries: 1 } } : {}),
      })
      return pen.attempt('wheel.checked', reading, { by: command.by, deviceId: otherTablet })
    }
    case 'see-stem':
      return pen.attempt('tire.inspected', tireOf(command.wheel, { stem: 'cracked' }), { by: command.by })
    case 'judge': {
      const issued = pen.attempt('diagnosis.issued', findingsOf(pen), { by: command.by })
      return issued.admitted
        ? pen.attempt(
            'diagnosis.confirmed',
            { diagnosisId: issued.entry.id, verdict: { agrees: true } },
            { by: command.by },
          )
        : issued
    }
    case 'estimate': {
      if (!state.diagnosis || estimateIsEmpty(pen)) return null
      const issued = changedEstimate(pen, (estimate) => {
        const [first, ...rest] = estimate.bundles
        if (!first) return estimate
        const totals = { ...first.money.totals, totalCents: first.money.totals.totalCents + command.cents }
        return { ...estimate, bundles: [{ ...first, money: { ...first.money, totals } }, ...rest] }
      })
      return pen.attempt('estimate.issued', issued, desk)
    }
    case 'decide': {
      if (state.estimates.length === 0) return null
      const decided = pen.attempt('estimate.decided', decisionOf(pen, answersOf(pen, command.answer)), desk)
      if (decided.admitted) issuePlan(pen, decided.entry.id)
      return decided
    }
    case 'break-sensor':
      return pen.attempt('sensor.broken', { wheel: command.wheel, how: 'dropped' }, { by: command.by })
    case 'seal':
      return pen.attempt('report.sealed', sealOf(pen, state.reports.at(-1)?.reportNumber ?? null), {
        ...desk,
        given: { reportNumber: `R-${state.reports.length + 1}` },
      })
    case 'hand-back':
      return pen.attempt(
        'order.handed_back',
        {
          ...handBack,
          odometer: lastOdometer(state)?.distance ?? null,
          releaseAgreedBy: agreedBy(command.agreed),
        },
        desk,
      )
    case 'withdraw-order':
      return pen.attempt('order.withdrawn', { reason: 'customer', words: wordsOf('why') }, desk)
    case 'repeat-id': {
      const known = pick(pen.entries(), command.at)
      return known ? pen.attempt('note.added', { words: wordsOf('note') }, { ...desk, id: known.id }) : null
    }
  }
}

const estimateIsEmpty = (pen: OrderPen): boolean =>
  !(pen.state().diagnosis?.diagnosis.findings ?? []).some(({ offers }) =>
    offers.some((offer) =>
      ['sensor', 'stem', 'service-kit', 'leak-find', 'relearn', 'pressure-set'].includes(offer),
    ),
  )

const torqueStepsOf = (plan: PlanInForce | undefined): Step[] =>
  (plan?.steps ?? []).filter(({ closedBy }) => closedBy === 'studs.torqued' || closedBy === 'torque.checked')

const pick = <T>(list: readonly T[] | undefined, at: number): T | undefined =>
  list && list.length > 0 ? list[at % list.length] : undefined
