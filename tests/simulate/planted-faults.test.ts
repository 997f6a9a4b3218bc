import { expect, it } from 'vitest'
import { liveDay, replayDay } from './day.ts'
import { shortestHistory } from './failing-history.ts'
import { plantedFaults } from './planted-faults.ts'

const seed = 1

/** The first day on which a planted fault shows. */
const failingDay = async (name: string) => {
  const planted = plantedFaults[name]
  if (!planted) throw new RangeError(`no fault is called "${name}"`)
  for (let day = 0; day < 8; day += 1) {
    const lived = await liveDay({ seed, day, steps: 1_500 }, planted.plants)
    if (lived.violation) return { ...planted, day, lived: { ...lived, violation: lived.violation } }
  }
  throw new Error('nothing was noticed')
}

it.each(Object.keys(plantedFaults))(
  '%s is caught, and the same history is harmless without it',
  async (name) => {
    const { day, lived, fault } = await failingDay(name)
    expect(lived.violation.fault).toBe(fault)
    expect(await replayDay({ seed, day, comesHome: true }, lived.actions)).toBeNull()
  },
)

it.each(['an outbox that drops before the answer', 'a server that leaves out the guard of the head'])(
  '%s is shown in a short history in plain words',
  async (name) => {
    const { day, lived, fault, plants } = await failingDay(name)
    const { lines, violation } = await shortestHistory({ seed, day }, lived, plants)
    expect(violation.fault).toBe(fault)
    expect(lines.length).toBeLessThan(30)
    expect(lines[0]).toMatch(
      /^\d\d:\d\d:\d\d {2}(advisor|technician|colleague|lead) signs in (at desk|on tablet) \d$/,
    )
  },
)
