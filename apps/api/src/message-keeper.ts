import type { Parts } from './deps.ts'
import { deliverDue } from './features/messages/service/deliver-due.ts'

export type MessageKeeper = {
  /** One round of the outbox; gives how many messages were tried. */
  readonly deliver: () => Promise<number>
  /** Looks at the outbox from now on, round by round. */
  readonly keep: () => void
  /** Finishes the message that is on its way, and hands over no other. */
  readonly stop: () => Promise<void>
}

/** How often the outbox is looked at. */
const lookEveryMs = 5_000

/** Hands over what waits in the outbox. `problem` hears of what could not be made or read. */
export const messageKeeper = (
  parts: Parts,
  problem: (words: string, error: unknown) => void,
): MessageKeeper => {
  let working: Promise<unknown> | null = null
  let timer: NodeJS.Timeout | undefined
  const deliver = () => deliverDue(parts, problem)
  const look = () => {
    working ??= deliver()
      .catch((error: unknown) => problem('The outbox could not be looked at.', error))
      .finally(() => {
        working = null
      })
  }
  return {
    deliver,
    keep: () => {
      timer = setInterval(look, lookEveryMs)
      timer.unref()
      look()
    },
    stop: async () => {
      clearInterval(timer)
      await working
    },
  }
}
