import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { repositoryFiles, root, textOf } from './repository-files.ts'

type File = { readonly name: string; readonly text: string }

/** A line for each file that is not one file of checks against one source. */
const faultsOf = (files: readonly File[]): string[] => {
  const sources = new Map<string, string>()
  return files.flatMap(({ name, text }) => {
    const [before = '', ...calls] = text.split(/^published\(/m)
    if (calls.length !== 1) return [`${name}: it calls published( ${calls.length} times; once is right`]
    const source = calls[0]?.split('=>')[0]?.replace(/\s+/g, ' ') ?? ''
    const other = sources.get(source)
    sources.set(source, name)
    return [
      ...(/^(\/\*\*|\/\/)/m.test(before) ? [] : [`${name}: no comment at its head names the source`]),
      ...(other === undefined ? [] : [`${name}: ${other} names the same source; put both into one file`]),
    ]
  })
}

describe('each file of published checks', () => {
  const files = repositoryFiles()
    .filter((file) => /^tests\/published\/.*\.test\.ts$/.test(file))
    .map((name) => ({ name, text: textOf(name) }))

  it('names its one source, at its head and once for the count', () => {
    expect(files.length).toBeGreaterThanOrEqual(25)
    expect(faultsOf(files)).toEqual([])
  })

  it('would be found where it does not', () => {
    const right = "/** A handbook. */\npublished({ document: 'A' }, () => {})\n"
    expect(faultsOf([{ name: 'right.test.ts', text: right }])).toEqual([])
    expect(
      faultsOf([
        { name: 'none.test.ts', text: '/** A handbook. */\n' },
        { name: 'headless.test.ts', text: "published({ document: 'A' }, () => {})\n" },
        { name: 'same.test.ts', text: right },
      ]),
    ).toEqual([
      'none.test.ts: it calls published( 0 times; once is right',
      'headless.test.ts: no comment at its head names the source',
      'same.test.ts: headless.test.ts names the same source; put both into one file',
    ])
  })
})

describe('npm run check:published', () => {
  mkdirSync(join(root, 'out'), { recursive: true })
  const planted = mkdtempSync(join(root, 'out', 'planted-'))
  afterAll(() => rmSync(planted, { recursive: true }))

  const imports = `import { expect, it } from 'vitest'\nimport { published } from '${join(root, 'tests/published/published.ts')}'\n`
  const plant = (name: string, text: string) => writeFileSync(join(planted, name), `${imports}${text}\n`)
  const under = (document: string, checks: string) =>
    `published({ document: '${document}', certainty: 'read' }, () => { ${checks} })`
  const convention = (document: string, checks: string) =>
    under(document, checks).replace("'read'", "'our convention, not counted'")
  const run = () =>
    spawnSync(process.execPath, ['tests/published/check-published.ts', relative(root, planted)], {
      cwd: root,
      encoding: 'utf8',
    })

  describe('on files of which each has a fault', () => {
    let said = { status: 0 as number | null, stdout: '', stderr: '' }
    beforeAll(() => {
      plant('good.test.ts', under('Good', "it('holds', () => expect(1).toBe(1))"))
      plant('again.test.ts', under('Good', "it('holds', () => expect(1).toBe(1))"))
      plant('wrong.test.ts', under('Wrong', "it('fails', () => expect(1).toBe(2))"))
      plant('skipped.test.ts', under('Skipped', "it.skip('waits', () => expect(1).toBe(1))"))
      plant('empty.test.ts', under('Empty', ''))
      plant('outside.test.ts', "it('is nowhere', () => expect(1).toBe(1))")
      plant('broken.test.ts', "import './nowhere.ts'")
      plant('ours.test.ts', convention('Ours', "it('holds', () => expect(1).toBe(1))"))
      said = run()
    })

    it.each([
      ['a failed check', /^Wrong \[read\]\n {2}fails: expected 1 to be 2/m],
      ['a skipped check', /^Skipped \[read\]\n {2}waits: it was skipped$/m],
      ['a source without a check', /empty\.test\.ts: .*(no check|No test)/i],
      ['a check of no source', /outside\.test\.ts: "is nowhere" is outside of published\(\.\.\.\)$/m],
      ['a file that does not load', /broken\.test\.ts: .*nowhere/],
      ['a source with two files', /^Good \[read\]: named by two files/m],
    ])('names %s', (_, words) => {
      expect(said.stderr).toMatch(words)
    })

    it('ends with the count of what failed and a status to match', () => {
      expect(said.stdout).toContain('Good [read]: 1 checks, 1 passed\n')
      expect(said.stdout).toMatch(/\n2 passed, [1-9]\d* failed\n$/)
      expect(said.status).toBe(1)
    })

    it('prints a convention of our own and does not count it', () => {
      expect(said.stdout).toContain('Ours [our convention, not counted]: 1 checks, 1 passed\n')
      expect(said.stdout).toContain(
        '\n1 conventions of our own, held by 1 checks that are not counted\n2 passed,',
      )
    })
  })
})
