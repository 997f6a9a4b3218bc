import { readySteps } from '@bayledger/ledger/questions/gates'
import { whyNot } from '@bayledger/ledger/questions/why-not'
import type { OrderState } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import { gauge, wrench } from '../../packages/ledger/test-support/shop.ts'
import { closingOf, type Written } from '../../packages/ledger/test-support/step-payload.ts'
import { goodGauge } from '../../prisma/seeds/demo/instruments.ts'
import type { DemoShop } from '../../prisma/seeds/demo-shop.ts'

/**
 * What closes the next step of the plan, with the instruments of the demo shop; `null` where it is one that `until`
 * names. Throws where no step is ready.
 */
export const closeNext = (
  demo: DemoShop,
  state: OrderState,
  until: (step: Step) => boolean,
): Written | null => {
  const [step] = readySteps(state).filter((one) => whyNot(state, one) === null)
  if (step === undefined) throw new Error('no step of the plan is ready')
  return until(step) ? null : withDemoInstruments(demo, closingOf(state, step))
}

const withDemoInstruments = (demo: DemoShop, { kind, payload }: Written): Written => {
  const ofDemo = demo.instruments.find(({ code }) => code === wrench.code)
  if (ofDemo === undefined) throw new Error(`the demo has no wrench ${wrench.code}`)
  const used = {
    [wrench.instrumentId]: {
      ...wrench,
      instrumentId: ofDemo.id,
      dueOn: ofDemo.dueOn,
      cyclesBefore: ofDemo.cycles,
    },
    [gauge.instrumentId]: goodGauge,
  }
  const changed = JSON.parse(JSON.stringify(payload), (_, value) => used[value?.instrumentId] ?? value)
  return { kind, payload: changed } as Written
}
