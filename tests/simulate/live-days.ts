import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import type { Day } from './day.ts'

/** How many steps a day has. A failing one is shrunk by replaying it, which must not take long. */
export const stepsOfDay = 4_000

export type DayAsked = { readonly seed: number; readonly day: number; readonly steps: number }
export type DayDone = { readonly asked: DayAsked; readonly lived: Day }

/**
 * Lives so many steps, a day after the other, on all cores. Days know nothing of each other. Gives back the first day that
 * failed, whichever was found first, so that the same seed gives the same answer on any machine.
 */
export const liveDays = async (
  { seed, steps }: { readonly seed: number; readonly steps: number },
  progress: (steps: number, entries: number) => void,
): Promise<{ readonly steps: number; readonly entries: number; readonly failed: DayDone | null }> => {
  const days = Math.ceil(steps / stepsOfDay)
  let next = 0
  let lived = 0
  let entries = 0
  let failed: DayDone | null = null

  const ask = (): DayAsked | null => {
    if (next >= days || (failed !== null && next > failed.asked.day)) return null
    const day = next
    next += 1
    return { seed, day, steps: Math.min(stepsOfDay, steps - day * stepsOfDay) }
  }
  const take = (done: DayDone) => {
    lived += done.lived.steps
    entries += done.lived.entries
    if (done.lived.violation && (failed === null || done.asked.day < failed.asked.day)) failed = done
    progress(lived, entries)
  }
  const work = () =>
    new Promise<void>((resolve, reject) => {
      const worker = new Worker(new URL('./day-worker.ts', import.meta.url))
      const more = () => {
        const asked = ask()
        if (asked) worker.postMessage(asked)
        else void worker.terminate().then(() => resolve())
      }
      worker.on('error', reject)
      worker.on('message', (done: DayDone) => {
        take(done)
        more()
      })
      more()
    })
  await Promise.all(Array.from({ length: Math.min(days, availableParallelism()) }, work))
  return { steps: lived, entries, failed }
}
