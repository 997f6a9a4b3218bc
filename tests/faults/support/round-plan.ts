import {
  type Random,
  randomFrom,
} from '../../../packages/reckoning/src/diagnosis/physics/random.test-support.ts'
import { type Doing, type Errand, wheelNames } from './bay-taps.ts'
import type { FaultOrder } from './fault-shop.ts'
import { weathers } from './weather.ts'

/** What befalls a tablet right after a screen said done. */
export type Mishap = 'reload' | 'crash' | 'power cut'

export type PlannedStep = {
  /** A change of weather before the step. */
  readonly weather: string | null
  readonly errand: Errand
  readonly mishap: Mishap | null
}

export type RoundPlan = {
  readonly tablets: readonly [readonly PlannedStep[], readonly PlannedStep[]]
  /** After so many milliseconds the server is killed, and so many later it is started again. */
  readonly kill: { readonly after: number; readonly downFor: number } | null
}

/** How many steps a tablet takes in a round, unless somebody asks for fewer. */
export const usualSteps = 16

/** How often each thing is done beside the others. */
const shares: Readonly<Record<Doing, number>> = {
  gauge: 8,
  undo: 2,
  light: 1,
  outdoors: 2,
  tire: 2,
  'not-right': 1,
  withdraw: 1,
  step: 2,
  take: 1,
}
const bag = Object.entries(shares).flatMap(([doing, share]) => Array<Doing>(share).fill(doing as Doing))

/** The same seed plans the same round over the same orders. */
export const planRound = (seed: number, orders: readonly FaultOrder[], steps: number): RoundPlan => {
  const random = randomFrom(seed)
  // Two tablets, one pool of figures: none comes up twice in a round.
  const figures = random.some(
    Array.from({ length: 500 }, (_, index) => 200 + index),
    2 * steps,
  )
  const tablet = () => planTablet(random, orders, steps, () => figures.pop() ?? 200)
  return {
    tablets: [tablet(), tablet()],
    kill: random.chance(0.5)
      ? { after: random.between(500, 6_000), downFor: random.between(100, 1_500) }
      : null,
  }
}

const planTablet = (
  random: Random,
  orders: readonly FaultOrder[],
  steps: number,
  figure: () => number,
): readonly PlannedStep[] => {
  const work = orders.filter(({ stage }) => stage === 'work')
  const arrival = orders.filter(({ stage }) => stage === 'arrival')
  let order = random.oneOf(arrival)
  return Array.from({ length: steps }, (_, index) => {
    const doing = random.oneOf(bag)
    if (random.chance(0.4)) order = random.oneOf(arrival)
    const errand: Errand = {
      doing,
      order: doing === 'step' ? random.oneOf(work) : order,
      wheel: random.oneOf(wheelNames),
      tenths: figure(),
    }
    const isMishap = random.chance(0.08)
    const mishap = random.oneOf(['reload', 'crash', 'power cut'] as const)
    const changes = index === 0 || random.chance(0.2)
    const weather = random.oneOf(Object.keys(weathers))
    return { weather: changes ? weather : null, errand, mishap: isMishap ? mishap : null }
  })
}
