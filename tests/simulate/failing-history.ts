import type { Action } from './action.ts'
import { type Day, replayDay } from './day.ts'
import type { Plants } from './shop.ts'
import { shrink } from './shrink.ts'
import type { Violation } from './violation.ts'

export type FailingHistory = { readonly violation: Violation; readonly lines: readonly string[] }

/** The shortest history that still ends in the same fault, in plain words, one line for each thing that happened. */
export const shortestHistory = async (
  asked: { readonly seed: number; readonly day: number },
  { actions, violation, isEarly }: Day & { readonly violation: Violation },
  plants: Plants = {},
  progress: (length: number) => void = () => undefined,
): Promise<FailingHistory> => {
  const day = { ...asked, comesHome: !isEarly }
  const stillFails = async (shorter: readonly Action[]) =>
    (await replayDay(day, shorter, plants))?.fault === violation.fault
  const calmed = await firstThat(
    stillFails,
    rawEnds.map((count) => calm(actions, count)),
  )
  const shortest = await shrink(calmed ?? actions, stillFails, { progress, inPlaceOf: () => [goOn] })
  const lines: string[] = []
  const found = await replayDay(day, shortest, plants, (words) => lines.push(words))
  return { violation: found ?? violation, lines }
}

const goOn: Action = { does: 'go-on', luck: 0 }

/** What goes on of itself, and needs no line of its own where nothing breaks. */
const routine: ReadonlySet<Action['does']> = new Set(['message', 'statement', 'disk', 'look', 'garble'])

/** How many of the last actions are kept as they were. */
const rawEnds: readonly number[] = [0, 5, 20, 60, 200]

/** The same work and the same power cuts, but for the last actions with a network, disks and a database that work. */
const calm = (actions: readonly Action[], rawEnd: number): readonly Action[] => {
  const end = Math.max(0, actions.length - rawEnd)
  return [
    ...actions
      .slice(0, end)
      .flatMap((action): readonly Action[] =>
        routine.has(action.does) ? [] : action.does === 'work' ? [action, goOn] : [action],
      ),
    ...actions.slice(end),
  ]
}

const firstThat = async <T>(is: (one: T) => Promise<boolean>, list: readonly T[]): Promise<T | null> => {
  for (const one of list) if (await is(one)) return one
  return null
}
