import { relative } from 'node:path'
import type { TestCase, TestModule, TestSuite } from 'vitest/node'
import { ownConvention } from './published.ts'

/** Checks of one source. Those of a convention of our own are held, but are not counted as proof. */
export type Tally = {
  readonly source: string
  readonly checks: number
  readonly passed: number
  readonly isConvention: boolean
}

/** What a run of files came to; each fault is a line that says what is wrong and where. */
export type Outcome = { readonly tallies: readonly Tally[]; readonly faults: readonly string[] }

type Counted = { readonly tally: Tally | null; readonly faults: readonly string[] }

/**
 * Counts each test under a source as one check. A check that did not run has failed. A file that does not load, a
 * source without a check or with two files, and a test outside of `published(...)` are faults.
 */
export const outcomeOf = (root: string, modules: readonly TestModule[]): Outcome => {
  const counted = modules.flatMap((module) => countModule(relative(root, module.moduleId), module))
  const tallies = counted.flatMap(({ tally }) => (tally ? [tally] : []))
  return { tallies, faults: [...counted.flatMap(({ faults }) => faults), ...namedTwice(tallies)] }
}

const namedTwice = (tallies: readonly Tally[]): string[] =>
  tallies
    .map(({ source }) => source)
    .filter((source, at, all) => all.indexOf(source) !== at)
    .map((source) => `${source}: named by two files; a source has one file`)

const countModule = (file: string, module: TestModule): Counted[] => {
  const errors = module.errors().map(({ message }) => `${file}: ${message}`)
  const children = [...module.children]
  if (children.length === 0 && errors.length === 0) errors.push(`${file}: it holds no check`)
  return [
    { tally: null, faults: errors },
    ...children.map((child) =>
      child.type === 'suite'
        ? countSource(file, child)
        : { tally: null, faults: [`${file}: "${child.name}" is outside of published(...)`] },
    ),
  ]
}

const countSource = (file: string, suite: TestSuite): Counted => {
  const tests = [...suite.children.allTests()]
  const failed = tests.filter((test) => test.result().state !== 'passed')
  const faults = [
    ...suite.errors().map(({ message }) => `${file}: ${message}`),
    ...failed.map((test) => `${suite.name}\n  ${test.name}: ${reasonOf(test)}`),
    ...(tests.length === 0 ? [`${file}: ${suite.name} has no check`] : []),
  ]
  return {
    tally: {
      source: suite.name,
      checks: tests.length,
      passed: tests.length - failed.length,
      isConvention: suite.name.endsWith(`[${ownConvention}]`),
    },
    faults,
  }
}

const reasonOf = (test: TestCase): string => {
  const { state, errors } = test.result()
  return errors?.[0]?.message ?? (state === 'skipped' ? 'it was skipped' : 'it did not run')
}
