import { setTimeout as pause } from 'node:timers/promises'

const patienceMs = 90_000

/** What `/readyz` answers at a port: its status, or `null` where nothing does. */
export const readiness = async (port: number): Promise<number | null> => {
  try {
    const reply = await fetch(`http://localhost:${port}/readyz`, { signal: AbortSignal.timeout(20_000) })
    await reply.arrayBuffer()
    return reply.status
  } catch {
    return null
  }
}

/** Waits until the service says that it is ready; gives the seconds that took. Rejects when it does not for long. */
export const untilReady = async (port: number): Promise<number> => {
  const begun = performance.now()
  while ((await readiness(port)) !== 200) {
    if (performance.now() - begun > patienceMs) throw new Error('the service does not become ready again')
    await pause(20)
  }
  return (performance.now() - begun) / 1000
}

/** Waits until the service says by itself that it cannot work. Rejects when it goes on saying that it can. */
export const untilNotReady = async (port: number): Promise<void> => {
  const begun = performance.now()
  while ((await readiness(port)) !== 503) {
    if (performance.now() - begun > patienceMs)
      throw new Error('the service says that it is ready, and cannot work')
    await pause(20)
  }
}
