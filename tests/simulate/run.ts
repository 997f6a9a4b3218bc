import { parseArgs } from 'node:util'
import { shortestHistory } from './failing-history.ts'
import { liveDays } from './live-days.ts'
import type { Fault } from './violation.ts'

/**
 * `npm run simulate -- --seed 1 --steps 1000000`: the shop's own programs in a simulated world. docs/testing.md says what
 * happens in it and what must hold after every step.
 */
const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    steps: { type: 'string', default: '100000' },
  },
})

const wholeNumber = (name: string, text: string): number => {
  const number = Number(text)
  if (Number.isSafeInteger(number) && number >= 1) return number
  console.error(`--${name} is "${text}". It has to be a whole number, 1 or more.`)
  process.exit(2)
}

const seed = wholeNumber('seed', values.seed)
const steps = wholeNumber('steps', values.steps)

const begun = performance.now()
let said = begun
const seconds = () => `${Math.round((performance.now() - begun) / 1000)} s`
const say = (words: string, now = performance.now()) => {
  if (now - said < 2_000) return
  said = now
  console.error(words)
}
const shown = (count: number) => count.toLocaleString('en-US')

const lived = await liveDays({ seed, steps }, (done, entries) =>
  say(`${shown(done)} of ${shown(steps)} steps, ${shown(entries)} entries, ${seconds()}`),
)

const count: Record<Fault, number> = { lost: 0, twice: 0, diverged: 0, gates: 0 }
const { failed } = lived
if (failed?.lived.violation) {
  const { asked } = failed
  const { violation, actions } = failed.lived
  const lived = { ...failed.lived, violation }
  count[violation.fault] = 1
  console.log(`Day ${asked.day + 1} of seed ${seed} fails after ${actions.length} steps: ${violation.words}.`)
  const shortest = await shortestHistory(asked, lived, {}, (length) =>
    say(`looking for a shorter history: ${length} steps`),
  )
  console.log(`The shortest history that fails in the same way:\n\n${shortest.lines.join('\n')}\n`)
  console.log(`Then: ${shortest.violation.words}.\n`)
  process.exitCode = 1
}
console.error(`${seconds()}`)
const { lost, twice, diverged, gates } = count
console.log(
  `steps ${lived.steps}, entries ${lived.entries}, lost ${lost}, twice ${twice}, diverged ${diverged}, gates ${gates}`,
)
