import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import Stryker from '@stryker-mutator/core'
import { findingsSaid } from './findings-said.ts'
import { type Room, rooms } from './rooms.ts'
import { sampled } from './sample.ts'
import { percentOf, type Score, scoreOf, scoreWords, sumOf, survivorsOf } from './score.ts'

/**
 * `npm run mutate` changes reckoning in thousands of small ways and runs the tests against each; a change that no
 * test notices survives. `npm run mutate -- torque units` takes these rooms only, `--every 6` each sixth statement of
 * them. Prints the survivors and the score of each room; ends with status 1 where the score of all is under the least, or where tests fail on the unchanged
 * code.
 */
const least = 85
const root = join(import.meta.dirname, '..', '..')

const mutateRoom = async (room: Room, every: number): Promise<Score> => {
  console.log(`${room.name}:`)
  const started = performance.now()
  process.env.MUTATION_TESTS = room.tests.join(' ')
  const mutants = await new Stryker({
    configFile: 'tests/mutation/stryker.config.json',
    appendPlugins: [join(import.meta.dirname, 'prose.ts')],
    mutate: every === 1 ? [...room.mutate] : sampled(root, room.mutate, every),
    jsonReporter: { fileName: `out/mutation/${room.name.replace('/', '-')}.json` },
  }).runMutationTest()
  const score = scoreOf(mutants)
  for (const line of survivorsOf(root, mutants)) console.log(line)
  const minutes = ((performance.now() - started) / 60_000).toFixed(1)
  console.log(`${room.name}: ${scoreWords(score)} (${minutes} min)`)
  return score
}

/** `diagnosis` names all its parts. */
const isPart = (name: string, asked: string): boolean => name === asked || name.startsWith(`${asked}/`)

const main = async (argv: readonly string[]): Promise<number> => {
  const { values, positionals: asked } = parseArgs({
    args: [...argv],
    options: { every: { type: 'string', default: '1' } },
    allowPositionals: true,
  })
  const every = Number(values.every)
  if (!Number.isInteger(every) || every < 1) {
    console.error(`--every ${values.every}: a whole number from 1 on is right; 6 takes each sixth statement`)
    return 2
  }
  const all = rooms(root)
  const unknown = asked.filter((one) => !all.some(({ name }) => isPart(name, one)))
  if (unknown.length > 0) {
    console.error(`no room ${unknown.join(', ')}; there are ${all.map(({ name }) => name).join(', ')}`)
    return 2
  }
  process.env.MUTATION_SAID = join(root, 'out/mutation/findings-said.json')
  mkdirSync(join(root, 'out/mutation'), { recursive: true })
  writeFileSync(process.env.MUTATION_SAID, JSON.stringify(findingsSaid()))
  const scores: [name: string, score: Score][] = []
  const failed: string[] = []
  for (const room of all.filter(({ name }) => asked.length === 0 || asked.some((one) => isPart(name, one))))
    try {
      scores.push([room.name, await mutateRoom(room, every)])
    } catch (error) {
      console.error(`${room.name}: not run, see above (${String(error)})`)
      failed.push(room.name)
    }
  const total = sumOf(scores.map(([, score]) => score))
  for (const [name, score] of scores) console.log(`${name}: ${scoreWords(score)}`)
  console.log(`all rooms: ${scoreWords(total)}; ${least} % is the least`)
  if (failed.length > 0) console.error(`not run: ${failed.join(', ')}`)
  return failed.length > 0 || percentOf(total) < least ? 1 : 0
}

process.exitCode = await main(process.argv.slice(2))
