import type { Action, Happening } from './action.ts'
import type { Chance } from './chance.ts'
import type { Shop } from './shop.ts'
import type { Message } from './simulated-network.ts'
import type { AskedStatement } from './simulated-server.ts'

type Candidate = { readonly weight: number; readonly happening: () => Happening }

/** What happens next: mostly what is under way goes on, now and then something breaks. */
export const chooseAction = (shop: Shop, chance: Chance): Action => ({
  ...chooseHappening(shop, chance),
  luck: chance.word(),
})

const chooseHappening = (shop: Shop, chance: Chance): Happening => {
  const devices = [...shop.tablets, ...shop.desks].map(({ name }) => name)
  const device = () => chance.below(devices.length)
  const messages = shop.world.network.arriving()
  const statements = shop.statements()
  const writing = shop.tablets.flatMap(({ disk }, number) => (disk.pending() > 0 ? [number] : []))
  const candidates: readonly Candidate[] = [
    { weight: messages.length > 0 ? 40 : 0, happening: () => message(messages, devices, chance) },
    { weight: statements.length > 0 ? 40 : 0, happening: () => statement(statements, chance) },
    {
      weight: writing.length > 0 ? 30 : 0,
      happening: () => ({
        does: 'disk',
        device: writing[chance.below(writing.length)] ?? 0,
        full: chance.happens(0.003),
      }),
    },
    { weight: 16, happening: () => ({ does: 'work', device: device() }) },
    { weight: 2, happening: () => ({ does: 'look', device: device(), order: chance.below(5) }) },
    {
      weight: messages.length + statements.length === 0 ? 6 : 1,
      happening: () => ({ does: 'wait', milliseconds: waitOf(chance) }),
    },
    {
      weight: 0.5,
      happening: () => ({ does: 'reach', device: device(), isInReach: chance.happens(0.6) }),
    },
    { weight: 0.2, happening: () => ({ does: 'reboot', device: device(), survive: chance.below(3) }) },
    { weight: 0.2, happening: () => ({ does: 'kill', server: chance.below(2), done: chance.below(3) }) },
    { weight: 0.1, happening: () => ({ does: 'end-session', device: device() }) },
    { weight: 0.1, happening: () => ({ does: 'change-facts' }) },
  ]
  let left = (chance.word() / 2 ** 32) * candidates.reduce((sum, { weight }) => sum + weight, 0)
  for (const { weight, happening } of candidates) {
    left -= weight
    if (left < 0) return happening()
  }
  return { does: 'wait', milliseconds: 1_000 }
}

const message = (messages: readonly Message[], devices: readonly string[], chance: Chance): Happening => {
  const { device: name } = messages[chance.below(messages.length)] ?? { device: '' }
  const device = devices.indexOf(name)
  const pick = chance.below(messages.filter((one) => one.device === name).length)
  const fate = chance.below(100)
  if (fate === 99) return { does: 'garble', device, pick }
  return {
    does: 'message',
    device,
    pick,
    fate: fate < 4 ? 'is-lost' : fate < 8 ? 'arrives-twice' : 'arrives',
  }
}

const statement = (statements: readonly AskedStatement[], chance: Chance): Happening => {
  const { serverNumber } = statements[chance.below(statements.length)] ?? { serverNumber: 1 }
  const own = statements.filter((one) => one.serverNumber === serverNumber)
  const fate = chance.below(200)
  return {
    does: 'statement',
    server: serverNumber - 1,
    pick: chance.below(own.length),
    fate: fate < 2 ? 'breaks-before' : fate < 4 ? 'breaks-after' : 'answers',
  }
}

/** Seconds mostly, minutes often enough for every retry, now and then hours. */
const waitOf = (chance: Chance): number => {
  if (chance.happens(0.6)) return chance.below(5_000)
  if (chance.happens(0.9)) return chance.below(60_000)
  return chance.happens(0.9) ? chance.below(15 * 60_000) : chance.below(4 * 3_600_000)
}
