import type { Action } from './action.ts'
import { chanceOf, seedOf } from './chance.ts'
import { chooseAction } from './choose-action.ts'
import { comeHome } from './come-home.ts'
import { openShop, type Plants } from './shop.ts'
import type { Violation } from './violation.ts'

export type Day = {
  readonly steps: number
  /** What happened, to be lived again; empty where nothing went wrong. */
  readonly actions: readonly Action[]
  readonly entries: number
  readonly violation: Violation | null
  /** It went wrong during the day, and not only while everything came home. */
  readonly isEarly: boolean
}

/** Lives one day of so many steps, then lets everything come home. The same seed and day are the same at every run. */
export const liveDay = async (
  { seed, day, steps }: { readonly seed: number; readonly day: number; readonly steps: number },
  plants: Plants = {},
): Promise<Day> => {
  const daySeed = seedOf(seed, day)
  const chance = chanceOf(daySeed)
  const shop = openShop(daySeed, plants)
  const actions: Action[] = []
  while (actions.length < steps && shop.violation() === null) {
    const action = chooseAction(shop, chance)
    actions.push(action)
    await shop.act(action)
  }
  const isEarly = shop.violation() !== null
  if (!isEarly) await comeHome(shop)
  const violation = shop.violation()
  return {
    steps: actions.length,
    actions: violation ? actions : [],
    entries: shop.record.entryCount(),
    violation,
    isEarly,
  }
}

/** Which day is lived again, and whether everything comes home at its end. */
export type Replayed = { readonly seed: number; readonly day: number; readonly comesHome: boolean }

/** Lives a list of actions again, in a shop of the same seed; `tell` hears what happens. */
export const replayDay = async (
  { seed, day, comesHome }: Replayed,
  actions: readonly Action[],
  plants: Plants = {},
  tell: (words: string) => void = () => undefined,
): Promise<Violation | null> => {
  const shop = openShop(seedOf(seed, day), plants)
  for (const action of actions) {
    const at = new Date(shop.world.timers.now()).toISOString().slice(11, 19)
    const words = await shop.act(action)
    if (words !== null) tell(`${at}  ${words}`)
    if (shop.violation()) return shop.violation()
  }
  if (!comesHome) return null
  tell('          then every network, disk and server works, until nothing is under way')
  await comeHome(shop)
  return shop.violation()
}
