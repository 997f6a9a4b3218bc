import type { Wake } from '@bayledger/contract/live'

/** Screens wait a random moment up to this long, so that hundreds that hear one wake-up do not all read at once. */
const mostJitterMs = 250

/** Gathers wake-ups for a random moment, then has what they name read once; reads never overlap. */
export const gatherWakes = (
  read: (wake: Wake) => Promise<void>,
  wait: () => number = () => Math.random() * mostJitterMs,
) => {
  let pending: Wake | null = null
  let timer: ReturnType<typeof setTimeout> | null = null
  let reading: Promise<void> = Promise.resolve()
  let isStopped = false

  const readPending = () => {
    timer = null
    const wake = pending
    pending = null
    if (wake === null || isStopped) return
    reading = reading.then(() => read(wake)).catch(() => undefined)
  }
  return {
    add: (wake: Wake): void => {
      pending = pending === null ? wake : joinWakes(pending, wake)
      timer ??= setTimeout(readPending, wait())
    },
    stop: (): void => {
      isStopped = true
      if (timer !== null) clearTimeout(timer)
    },
  }
}

/** Two wake-ups as one: every order once, with its newest number. */
export const joinWakes = (one: Wake, other: Wake): Wake => {
  const orders = new Map(one.orders.map(({ orderId, seq }) => [orderId, seq]))
  for (const { orderId, seq } of other.orders) orders.set(orderId, Math.max(seq, orders.get(orderId) ?? 0))
  return {
    all: one.all || other.all,
    orders: [...orders].map(([orderId, seq]) => ({ orderId, seq })),
    tray: one.tray || other.tray,
  }
}
