import { execFileSync, spawnSync } from 'node:child_process'
import { appendFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '..', '..')
const depcruise = join(root, 'node_modules', '.bin', 'depcruise')
const config = join(root, '.dependency-cruiser.mjs')

type Summary = {
  readonly totalCruised: number
  readonly violations: readonly { readonly from: string; readonly rule: { readonly name: string } }[]
}

const cruise = (cwd: string, ...folders: string[]): Summary => {
  const run = spawnSync(depcruise, ['--config', config, '--output-type', 'json', ...folders], {
    cwd,
    encoding: 'utf8',
    maxBuffer: 256 * 1024 * 1024,
  })
  return (JSON.parse(run.stdout) as { summary: Summary }).summary
}

/** Every source file that git would keep, the generated client aside. */
const sourceFiles = (): string[] =>
  execFileSync(
    'git',
    ['ls-files', '--cached', '--others', '--exclude-standard', 'apps', 'packages', 'prisma', 'tests'],
    {
      cwd: root,
      encoding: 'utf8',
    },
  )
    .split('\n')
    .filter((file) => /\.tsx?$/.test(file) && !file.endsWith('.d.ts'))

describe('the import rules', () => {
  it('hold over the whole tree, and every module that exists was read', () => {
    const summary = cruise(root, 'apps', 'packages', 'prisma', 'tests')
    expect(summary.violations.map(({ rule, from }) => `${rule.name}: ${from}`)).toEqual([])
    expect(summary.totalCruised).toBeGreaterThanOrEqual(sourceFiles().length)
  }, 240_000)
})

/** One planted violation a rule: the file that breaks it, what it imports, and the file it imports. */
const planted: readonly (readonly [rule: string, from: string, imports: string, to: string])[] = [
  ['no-cycles', 'packages/reckoning/src/one.ts', './two.ts', 'packages/reckoning/src/two.ts'],
  ['everything-resolves', 'packages/ledger/src/lost.ts', './nowhere.ts', ''],
  ['reckoning-is-pure', 'packages/reckoning/src/clock.ts', 'node:fs', ''],
  [
    'ledger-knows-reckoning-only',
    'packages/ledger/src/query.ts',
    '../../db/src/pool.ts',
    'packages/db/src/pool.ts',
  ],
  [
    'wording-knows-facts-only',
    'packages/wording/src/query.ts',
    '../../db/src/pool.ts',
    'packages/db/src/pool.ts',
  ],
  [
    'contract-knows-ledger-and-reckoning',
    'packages/contract/src/row.ts',
    '../../db/src/pool.ts',
    'packages/db/src/pool.ts',
  ],
  [
    'report-knows-values-only',
    'packages/report/src/rows.ts',
    '../../db/src/pool.ts',
    'packages/db/src/pool.ts',
  ],
  ['db-holds-no-rules', 'packages/db/src/rule.ts', '../../ledger/src/fold.ts', 'packages/ledger/src/fold.ts'],
  [
    'packages-never-import-apps',
    'packages/report/src/app.ts',
    '../../../apps/api/src/app.ts',
    'apps/api/src/app.ts',
  ],
  [
    'apps-never-import-each-other',
    'apps/web/src/lib/server.ts',
    '../../../api/src/app.ts',
    'apps/api/src/app.ts',
  ],
  [
    'only-stores-touch-the-database',
    'apps/api/src/features/orders/service.ts',
    '../../../../../packages/db/src/pool.ts',
    'packages/db/src/pool.ts',
  ],
  [
    'web-knows-no-database',
    'apps/web/src/lib/rows.ts',
    '../../../../packages/db/src/pool.ts',
    'packages/db/src/pool.ts',
  ],
  [
    'policy-and-present-are-pure',
    'apps/api/src/features/orders/policy.ts',
    '../../http/access.ts',
    'apps/api/src/http/access.ts',
  ],
  [
    'use-cases-do-not-know-http',
    'apps/api/src/features/orders/service.ts',
    '../../http/access.ts',
    'apps/api/src/http/access.ts',
  ],
  [
    'http-does-not-know-features',
    'apps/api/src/http/access.ts',
    '../features/orders/service.ts',
    'apps/api/src/features/orders/service.ts',
  ],
  [
    'routes-go-through-the-service',
    'apps/api/src/features/orders/routes.ts',
    '../../../../../packages/db/src/pool.ts',
    'packages/db/src/pool.ts',
  ],
  [
    'routes-go-through-the-service',
    'apps/api/src/features/vehicles/routes.ts',
    './store.ts',
    'apps/api/src/features/vehicles/store.ts',
  ],
  [
    'a-feature-shows-only-its-service',
    'apps/api/src/features/sheets/service.ts',
    '../vehicles/present.ts',
    'apps/api/src/features/vehicles/present.ts',
  ],
  [
    'features-form-no-cycle',
    'apps/api/src/features/devices/service.ts',
    '../sheets/service.ts',
    'apps/api/src/features/sheets/service.ts',
  ],
  [
    'features-form-no-cycle',
    'apps/api/src/features/sheets/service/list-devices.ts',
    '../../devices/service.ts',
    'apps/api/src/features/devices/service.ts',
  ],
  [
    'faces-stand-alone',
    'apps/web/src/faces/desk/main.ts',
    '../bay/main.ts',
    'apps/web/src/faces/bay/main.ts',
  ],
  [
    'web-features-stand-alone',
    'apps/web/src/features/orders/list.ts',
    '../people/list.ts',
    'apps/web/src/features/people/list.ts',
  ],
  [
    'web-layers',
    'apps/web/src/features/orders/list.ts',
    '../../faces/desk/main.ts',
    'apps/web/src/faces/desk/main.ts',
  ],
  [
    'the-client-ledger-knows-no-screen',
    'apps/web/src/ledger/outbox.ts',
    '../features/people/list.ts',
    'apps/web/src/features/people/list.ts',
  ],
  [
    'ui-has-no-domain-words',
    'apps/web/src/ui/button.ts',
    '../features/orders/list.ts',
    'apps/web/src/features/orders/list.ts',
  ],
  [
    'customer-bundle-holds-no-staff-code',
    'apps/web/src/faces/customer/main.ts',
    '../desk/main.ts',
    'apps/web/src/faces/desk/main.ts',
  ],
  [
    'tests-use-the-front-door',
    'tests/api/orders.test.ts',
    '../../packages/db/src/pool.ts',
    'packages/db/src/pool.ts',
  ],
  [
    'nothing-imports-tests',
    'packages/ledger/src/help.ts',
    '../../../tests/support/app.ts',
    'tests/support/app.ts',
  ],
  ['seeds-know-no-apps', 'prisma/seeds/demo.ts', '../../apps/api/src/app.ts', 'apps/api/src/app.ts'],
]

describe('each import rule', () => {
  const folder = mkdtempSync(join(root, 'node_modules', '.planted-'))
  const found = plantAndCruise(folder)
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  it.each(planted)('%s finds its planted violation', (name, from) => {
    expect(found.get(name)?.some((place) => from === place || from.startsWith(`${place}/`))).toBe(true)
  })

  it('is planted at least once', async () => {
    const { default: rules } = (await import(config)) as { default: { forbidden: { name: string }[] } }
    expect(new Set(planted.map(([name]) => name))).toEqual(new Set(rules.forbidden.map(({ name }) => name)))
  })
})

/** Writes every planted file into one tree, cruises it once, and gives the files or folders that broke each rule. */
function plantAndCruise(folder: string): ReadonlyMap<string, string[]> {
  const add = (file: string, text: string) => {
    mkdirSync(join(folder, file, '..'), { recursive: true })
    appendFileSync(join(folder, file), text)
  }
  for (const [name, from, imports, to] of planted) {
    add(from, `import '${imports}'\n`)
    if (to) add(to, name === 'no-cycles' ? "import './one.ts'\n" : '')
  }
  const folders = new Set(
    planted.flatMap(([, from, , to]) => [from, to].map((file) => file.split('/')[0] ?? '')),
  )
  folders.delete('')
  const found = new Map<string, string[]>()
  for (const { rule, from } of cruise(folder, ...folders).violations)
    found.set(rule.name, [...(found.get(rule.name) ?? []), from])
  return found
}
