import { parentPort } from 'node:worker_threads'
import { liveDay } from './day.ts'
import type { DayAsked, DayDone } from './live-days.ts'

/** Lives the days that it is asked for, one after the other, on a core of its own. */
parentPort?.on('message', async (asked: DayAsked) => {
  const done: DayDone = { asked, lived: await liveDay(asked) }
  parentPort?.postMessage(done)
})
