import type { Parts } from './deps.ts'
import { deliverDue } from './features/messages/service/deliver-due.ts'

export type MessageKeeper = {
  /** Finishes the message that is on its way, and hands over no other. */
  readonly stop: () => Promise<void>
}

/** How often the outbox is looked at. */
const lookEveryMs = 5_000

/** Hands over what waits in the outbox, round by round. */
export const keepMessages = (
  parts: Parts,
  problem: (words: string, error: unknown) => void,
): MessageKeeper => {
  let working: Promise<unknown> | null = null
  const look = () => {
    working ??= deliverDue(parts, problem)
      .catch((error: unknown) => problem('The outbox could not be looked at.', error))
      .finally(() => {
        working = null
      })
  }
  const timer = setInterval(look, lookEveryMs)
  timer.unref()
  look()
  return {
    stop: async () => {
      clearInterval(timer)
      await working
    },
  }
}
