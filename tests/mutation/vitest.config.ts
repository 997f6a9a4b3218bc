import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** The copy of the tree in which the mutation run works; its node_modules is a link to the real one. */
const root = join(import.meta.dirname, '..', '..')

/**
 * Tests that take too long to run again for each mutant; engine/judge-cases.test.ts judges the same cases. In place of
 * the pin of the rule set, findings-said.test.ts holds what a diagnosis says word for word.
 */
const tooLong = ['**/diagnosis/diagnose.properties.test.ts', '**/diagnosis/cases/cases.test.ts']

/** Published checks of other rooms than reckoning, which the copy does not hold. */
const ofOtherRooms = globSync('tests/published/**/*.test.ts', { cwd: root }).filter((file) =>
  /from '(@bayledger\/(?!reckoning\/)|\.\.\/)/.test(readFileSync(join(root, file), 'utf8')),
)

/** The quickest of the diagnosis comes first and notices most; what takes longest comes last. */
const order = [
  'engine/judge-cases.test.ts',
  '',
  'mutation/findings-said.test.ts',
  'telltale/predict-telltale.test.ts',
  'engine/judge.test.ts',
  'checks/next-checks.test.ts',
]
const place = ({ moduleId }: TestSpecification): number => {
  const named = order.findIndex((file) => file !== '' && moduleId.endsWith(file))
  return named === -1 ? order.indexOf('') : named
}

/**
 * The tests that a mutant of reckoning has to get past; MUTATION_TESTS has their globs. The workspace's
 * own links lead to the real tree, so imports by package name are turned to the copy, which is where the mutants are.
 */
export default defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^@bayledger\/reckoning\/(.+)$/, replacement: join(root, 'packages/reckoning/src/$1.ts') },
    ],
  },
  test: {
    include: (process.env.MUTATION_TESTS ?? '').split(' '),
    exclude: [...ofOtherRooms, ...tooLong],
    sequence: {
      sequencer: class extends BaseSequencer {
        override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
          return [...files].sort((one, other) => place(one) - place(other))
        }
      },
    },
    isolate: false,
    testTimeout: 60_000,
  },
})
