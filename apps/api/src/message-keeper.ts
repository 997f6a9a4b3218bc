import { inRounds, type Rounds } from './core/in-rounds.ts'
import { watchOutage } from './core/outage.ts'
import type { Parts } from './deps.ts'
import { deliverDue } from './features/messages/service/deliver-due.ts'

/** Looks at the outbox round by round; `stop` finishes the message that is on its way, and hands over no other. */
export type MessageKeeper = Rounds & {
  /** One round of the outbox; gives how many messages were tried. */
  readonly deliver: () => Promise<number>
}

/** How often the outbox is looked at. */
const lookEveryMs = 5_000

/** Hands over what waits in the outbox. `problem` hears of what could not be made or read, `recovered` that it can be read again. */
export const messageKeeper = (
  parts: Parts,
  problem: (words: string, error: unknown) => void,
  recovered: (words: string, seconds: number) => void = () => undefined,
): MessageKeeper => {
  const deliver = () => deliverDue(parts, problem)
  const outage = watchOutage({
    begun: (error) => problem('The outbox could not be looked at.', error),
    over: (seconds) => recovered('The outbox can be looked at again.', seconds),
  })
  const rounds = inRounds(lookEveryMs, () => deliver().then(outage.works), outage.failed)
  return { ...rounds, deliver }
}
