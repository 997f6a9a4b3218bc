import { readThread } from '../torque/read-thread.ts'
import { type Thread, threadDiameter, threadText } from '../torque/thread.ts'
import { metersPerInch } from '../units/exact-factors.ts'

/** Whether a nut or bolt turns far enough onto its thread. */
export type Engagement =
  | { readonly outcome: 'unreadable-thread' }
  | {
      /**
       * `short-of-sheet`: fewer than the sheet says; `short-of-trade`: fewer than the trade's least for the thread;
       * `under-one-diameter`: enough for these, and less than one diameter of the thread.
       */
      readonly outcome: 'enough' | 'under-one-diameter' | 'short-of-sheet' | 'short-of-trade'
      /** The trade's least; where no page gives one, the turns that make one diameter. */
      readonly leastTurns: number
      readonly turnsOfOneDiameter: number
    }

/** By thread, as `threadText` writes it. */
const printedTurns: Readonly<Record<string, number>> = {
  'M12×1.5': 6.5,
  'M12×1.25': 8,
  'M14×1.5': 7.5,
  '1/2-20': 8,
  '9/16-18': 8,
}

/**
 * Whether the turns by which a nut or bolt goes on, counted by hand, hold it. What the sheet says governs; beside it the
 * trade's least for the thread is held; where no page gives one, and as a doubt beside it, one diameter of the thread.
 *
 * @formula one diameter = diameter / pitch turns
 * @units full turns
 * @limits a guard, never a source: a maker may require more. A nut with a shank or a spacer holds less than its turns say
 * @source least turns of M12×1.5 (6.5), M12×1.25 (8), M14×1.5 (7.5), 1/2-20 (8), 9/16-18 (8): two pages on wheel nuts (read);
 * at least one diameter: a wheel seller's page on lug nuts, which names the automobile engineers' society (read)
 */
export const threadEngagement = (thread: string, turns: number, sheetTurns: number | null): Engagement => {
  const read = readThread(thread)
  if (!read.ok) return { outcome: 'unreadable-thread' }
  const perDiameter = threadDiameter(read.value) / pitch(read.value)
  const leastTurns = printedTurns[threadText(read.value)] ?? perDiameter
  return {
    outcome:
      sheetTurns !== null && turns < sheetTurns
        ? 'short-of-sheet'
        : turns < leastTurns
          ? 'short-of-trade'
          : turns < perDiameter - 1e-9
            ? 'under-one-diameter'
            : 'enough',
    leastTurns,
    turnsOfOneDiameter: perDiameter,
  }
}

const pitch = (thread: Thread): number =>
  thread.system === 'metric' ? thread.pitch : (metersPerInch * 1_000) / thread.threadsPerInch
