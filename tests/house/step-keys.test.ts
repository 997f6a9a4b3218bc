import { expect, it } from 'vitest'
import { repositoryFiles, textOf } from './repository-files.ts'

/** Plans of version 1 said in their keys, and nowhere else, what a step is. */
const allowed = 'packages/ledger/src/subjects/work/plan-version-1.ts'

/** Takes a step's key apart: by a method of text, by a pattern, or by an ending that it is compared with. */
const readsKey = [
  /\b(stepKey|key)\b[?!]?\.(split|endsWith|startsWith|includes|indexOf|match|slice|substring|replace|at)\(/,
  /\.test\([^)]*\bstepKey\b/,
  /===\s*`\$\{[^}]*\}\.[a-z.-]+`|`\$\{[^}]*\}\.[a-z.-]+`\s*===/,
]

const sources = repositoryFiles().filter(
  (file) =>
    /^(packages|apps)\/[^/]+\/src\/.*\.tsx?$|^prisma\/.*\.ts$/.test(file) &&
    !/\.(test|test-support)\.tsx?$/.test(file) &&
    file !== allowed,
)

it('no source reads meaning out of the key of a step', () => {
  expect(sources.length).toBeGreaterThan(300)
  const found = sources.flatMap((file) =>
    textOf(file)
      .split('\n')
      .flatMap((line, index) =>
        /step/i.test(line) && readsKey.some((pattern) => pattern.test(line))
          ? [`${file}:${index + 1} ${line.trim()}`]
          : [],
      ),
  )
  expect(found).toEqual([])
})

it.each([
  "step.stepKey.endsWith('.tire.open')",
  "stepKey.split('.').at(-1)",
  'steps.find(({ stepKey }) => stepKey === `#{wheel}.studs.torque-half`)',
  '/torque-again$/.test(step.stepKey)',
])('the pattern finds %s', (line) => {
  expect(readsKey.some((pattern) => pattern.test(line.replace('#{', '${')))).toBe(true)
})

it('version 1 is the one that does', () => {
  expect(readsKey.some((pattern) => pattern.test(textOf(allowed)))).toBe(true)
})
