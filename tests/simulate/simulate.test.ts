import { expect, it } from 'vitest'
import type { Action } from './action.ts'
import { liveDay, replayDay } from './day.ts'

it('loses nothing, doubles nothing and agrees on everything in a few days', async () => {
  for (const day of [0, 1, 2]) {
    const lived = await liveDay({ seed: 20_260_112, day, steps: 1_500 })
    expect(lived.violation).toBeNull()
    expect(lived.steps).toBe(1_500)
    expect(lived.entries).toBeGreaterThan(40)
  }
})

it('is the same history whenever it is lived', async () => {
  const told = async () => {
    const lines: string[] = []
    const actions = Array.from({ length: 60 }, (_, luck): Action[] => [
      { does: 'work', device: luck, luck },
      { does: 'message', device: luck, pick: 0, fate: 'arrives', luck },
      { does: 'go-on', luck },
      { does: 'wait', milliseconds: 400, luck },
    ]).flat()
    expect(
      await replayDay({ seed: 3, day: 0, comesHome: true }, actions, {}, (line) => lines.push(line)),
    ).toBeNull()
    return lines
  }
  const once = await told()
  expect(once.length).toBeGreaterThan(60)
  expect(await told()).toEqual(once)
})
