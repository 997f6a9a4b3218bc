import { describe, expect, it } from 'vitest'
import { lockedPackages } from '../../apps/api/src/commands/licenses-page.ts'
import { repositoryFiles, textOf } from './repository-files.ts'

/** What runs in the product: neither tests nor tools. */
const sources = repositoryFiles().filter(
  (file) =>
    /^(?:apps|packages)\/[^/]+\/(?:src\/)?.*\.(?:ts|tsx|mjs|html)$/.test(file) &&
    !/\.test\.tsx?$|\/(?:test-support|generated)\//.test(file),
)
/** Comments and types do nothing. */
const withoutComments = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\/|(?<=^|\s)\/\/.*$|^import type .*$/gm, '')
const code = new Map(sources.map((file) => [file, withoutComments(textOf(file))]))

const filesWith = (pattern: RegExp): string[] =>
  [...code].filter(([, text]) => pattern.test(text)).map(([file]) => file)

/** What nobody may write, with a line that must be found. */
const never: readonly (readonly [string, RegExp, string])[] = [
  [
    'code made of text',
    /\beval\(|\bnew Function\(|\bsetTimeout\(\s*['"`]|['"](?:node:)?vm['"]/,
    'eval(typed)',
  ],
  [
    'HTML made of text in a page',
    /dangerouslySetInnerHTML|\.(?:inner|outer)HTML\b|insertAdjacentHTML|document\.write\b|DOMParser/,
    'box.innerHTML = name',
  ],
  ['a shell', /\bexec(?:Sync)?\(\s*[`'"]|shell:\s*true/, 'execSync(`ls`)'],
  [
    'SQL from a text of ours and a value',
    /\$(?:query|execute)RawUnsafe|Prisma\.raw\(/,
    'db.$queryRawUnsafe(text)',
  ],
  ['a digest that is broken', /['"](?:md5|ripemd\w*)['"]|createHash\(['"]sha-?1/i, "createHash('md5')"],
  [
    'a cipher without authentication',
    /aes-\d+-(?:ecb|cbc|ctr)|['"]AES-(?:CBC|CTR)['"]|createCipher\(/i,
    "'aes-256-cbc'",
  ],
  ['RSA padding of PKCS #1 v1.5 for secrets', /RSA_PKCS1_PADDING|RSAES-PKCS1/, 'RSA_PKCS1_PADDING'],
  ['a WebSocket', /\bnew WebSocket\(|['"]ws['"]/, 'new WebSocket(address)'],
  ['WebRTC', /\bRTCPeerConnection\b/, 'new RTCPeerConnection()'],
  [
    'messages of other windows',
    /window\.addEventListener\(\s*['"]message['"]|\bwindow\.open\(|parent\.postMessage/,
    'window.open(address)',
  ],
  ['an address of a script', /['"`]javascript:/i, "'javascript:go()'"],
  ['another origin let in', /access-control-allow-origin/i, "'access-control-allow-origin': '*'"],
]

describe('no source of the product', () => {
  it('is left out of this search', () => {
    expect(sources.length).toBeGreaterThan(800)
    expect(sources).toEqual(expect.arrayContaining(['apps/api/src/app.ts', 'apps/web/desk.html']))
  })

  it.each(never)('holds %s', (_what, pattern, planted) => {
    expect(filesWith(pattern)).toEqual([])
    expect(planted).toMatch(pattern)
  })
})

/** What few files may do, and which. Whoever adds one thinks about who gives it what it works with. */
const only: readonly (readonly [string, RegExp, readonly string[]])[] = [
  [
    'use SHA-1, within the HMAC that every authenticator app knows (RFC 6238)',
    /['"]sha-?1['"]/i,
    ['apps/api/src/core/totp.ts'],
  ],
  [
    'take a certificate unseen: the look of a container at itself',
    /rejectUnauthorized:\s*false|NODE_TLS_REJECT_UNAUTHORIZED/,
    ['apps/api/deploy/is-ready.mjs'],
  ],
  [
    'open a connection or a port, with an address from the settings or of this machine',
    /createTransport\(|new (?:pg\.)?(?:Pool|Client)\(|TraceExporter\(|\bfetch\(|https?\.(?:request|get)\(|(?<!isIP } from ')node:(?:net|tls|dgram|http|https)['"]/,
    [
      'apps/api/deploy/is-ready.mjs',
      'apps/api/src/carriers/smtp-carrier.ts',
      'apps/api/src/http/live-channel.ts',
      'apps/api/src/observe/serve-metrics.ts',
      'apps/api/src/observe/tracing.ts',
      'apps/api/src/stamping/ask-authority.ts',
      'packages/db/src/embedded/ensure-running.ts',
      'packages/db/src/embedded/postmaster.ts',
      'packages/db/src/migrations/schema-engine.ts',
      'packages/db/src/pool.ts',
      'packages/db/src/with-client.ts',
    ],
  ],
  [
    'start another program, each by its path and a list of words',
    /node:child_process/,
    [
      'apps/api/src/backup-keeper.ts',
      'apps/api/src/commands/advisories/ask-registry.ts',
      'apps/api/src/commands/dev.ts',
      'apps/api/src/commands/prepare.ts',
      'apps/api/src/commands/start.ts',
      'packages/db/src/commands/generate.ts',
      'packages/db/src/embedded/identity.ts',
      'packages/db/src/embedded/lock-file.ts',
      'packages/db/src/embedded/postmaster.ts',
      'packages/db/src/embedded/run-program.ts',
    ],
  ],
  [
    'make a pattern of a text, which is ours',
    /new RegExp\(/,
    ['packages/contract/src/orders.ts', 'packages/reckoning/src/tire/read-size-tail.ts'],
  ],
  [
    'use chance that can be guessed, for a pause',
    /Math\.random\(/,
    ['apps/web/src/features/ledger/gather-wakes.ts'],
  ],
  ['send a browser on', /\.redirect\(/, ['apps/api/src/http/serve-web.ts']],
]

describe('only the listed sources', () => {
  it.each(only)('%s', (_what, pattern, files) => {
    expect(filesWith(pattern).toSorted()).toEqual(files)
  })
})

/** Libraries of what the product does not do; the requirements of a standard that are about it do not apply meanwhile. */
const absent: Readonly<Record<string, RegExp>> = {
  'a directory by LDAP': /ldap/,
  'XPath, XSLT and XML from outside': /xpath|xslt|libxml|xml2js|fast-xml-parser|sax$|xmldom/,
  'LaTeX, templates and markup made of what people type':
    /latex|handlebars|nunjucks|^ejs$|^pug$|mustache|^marked$|markdown-it/,
  'a shared cache': /memcache|redis/,
  GraphQL: /graphql/,
  WebSocket: /^ws$|socket\.io|websocket/,
  'WebRTC, TURN and DTLS': /webrtc|wrtc|\bturn\b|dtls/,
  'sign-in by another service (OAuth, OpenID Connect, SAML)': /oauth|openid|oidc|saml|passport/,
  'tokens that hold their own claims': /jsonwebtoken|^jose$|\bjwt\b|paseto/,
  'codes by telephone': /twilio|vonage|sms/,
  'objects made of bytes that somebody sent': /node-serialize|funcster|serialize-javascript|^js-yaml$|^yaml$/,
  'zip files and other archives that somebody uploads': /unzip|adm-zip|yauzl|jszip/,
}
const running = lockedPackages(textOf('package-lock.json')).filter(({ isTool }) => !isTool)

describe('no package that runs in the product is for', () => {
  it.each(Object.entries(absent))('%s', (_what, name) => {
    expect(running.length).toBeGreaterThan(50)
    expect(running.filter((one) => name.test(one.name)).map((one) => one.name)).toEqual([])
  })
})

describe('a field for a password', () => {
  it('hides what is typed, and lets nobody’s paste and no password manager out', () => {
    const fields = [...code].flatMap(([file, text]) =>
      [
        ...text.matchAll(
          /<\w+Field\b(?:[^<>]|=>)*?autoComplete="(?:current|new)-password"(?:[^<>]|=>)*?\/?>/g,
        ),
      ].map(([field]) => ({ file, field })),
    )
    expect(fields.length).toBeGreaterThanOrEqual(3)
    expect(fields.filter(({ field }) => !field.includes('type="password"'))).toEqual([])
    expect(filesWith(/onPaste=/)).toEqual([])
  })
})
