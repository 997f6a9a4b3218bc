import type { Reply, Request } from './simulated-server.ts'
import type { Timers } from './timers.ts'

/** A message on its way between a device and the service. */
export type Message = {
  readonly device: string
  /** Which of the device's requests it belongs to. */
  readonly call: number
  /** Not before this time, milliseconds since 1970. */
  readonly arrivesAt: number
  readonly carries: { readonly request: Request } | { readonly reply: Reply }
}

/** How long a device waits for an answer. */
export const patienceMs = 30_000

export type Network = {
  /** Sends a request; resolves to its first answer, or to nothing after `patienceMs`. */
  readonly call: (device: string, request: Request, isAlive: () => boolean) => Promise<Reply>
  /** Puts a message on its way; `delayMs` from now at the earliest. */
  readonly send: (message: Omit<Message, 'arrivesAt'>, delayMs: number) => void
  /** Messages that may arrive now. */
  readonly arriving: () => readonly Message[]
  readonly count: () => number
  readonly take: (message: Message) => void
  /** Hands an answer to the device that waits for it; one that nobody waits for is dropped. */
  readonly hand: (call: number, reply: Reply) => void
  readonly setReach: (device: string, isInReach: boolean) => void
  readonly isInReach: (device: string) => boolean
}

/** `delayOf` says how long each message is under way, milliseconds. */
export const newNetwork = (timers: Timers, delayOf: () => number): Network => {
  let messages: Message[] = []
  let calls = 0
  const waiting = new Map<number, (reply: Reply) => void>()
  const outOfReach = new Set<string>()

  const settle = (call: number, reply: Reply) => {
    waiting.get(call)?.(reply)
    waiting.delete(call)
  }
  const send: Network['send'] = (message, delayMs) => {
    messages.push({ ...message, arrivesAt: timers.now() + delayMs })
  }

  return {
    call: (device, request, isAlive) =>
      new Promise((resolve) => {
        if (outOfReach.has(device)) {
          resolve({ says: 'nothing' })
          return
        }
        calls += 1
        const call = calls
        waiting.set(call, resolve)
        send({ device, call, carries: { request } }, delayOf())
        timers.after(patienceMs, () => settle(call, { says: 'nothing' }), isAlive)
      }),
    send,
    arriving: () => {
      const now = timers.now()
      return messages.filter(({ arrivesAt, device }) => arrivesAt <= now && !outOfReach.has(device))
    },
    count: () => messages.length,
    take: (message) => {
      messages = messages.filter((one) => one !== message)
    },
    hand: settle,
    setReach: (device, isInReach) => {
      if (isInReach) outOfReach.delete(device)
      else outOfReach.add(device)
    },
    isInReach: (device) => !outOfReach.has(device),
  }
}
