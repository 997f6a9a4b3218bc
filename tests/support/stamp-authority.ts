import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { runOutsideTool } from './run-outside-tool.ts'

/** How the authority answers. `as-it-should`: what `openssl ts` makes of the request. */
export type Manner =
  | 'as-it-should'
  | 'refuses'
  | 'refuses-by-http'
  | 'hangs'
  | 'another-nonce'
  | 'another-imprint'
  | 'no-usage'
  | 'no-der'
  | 'cut-off'
  | 'huge'

export type StampAuthority = {
  readonly address: string
  /** Its root, as PEM text, and the file with it. */
  readonly root: string
  readonly rootFile: string
  readonly answer: (manner: Manner) => void
  /** What it was sent, the newest last. */
  readonly asked: { readonly type: string; readonly authorization: string | null }[]
  readonly folder: string
  readonly stop: () => Promise<void>
}

/**
 * A time-stamp authority on this machine: OpenSSL's `ts` behind HTTP (RFC 3161, 3.4), with a root and a certificate of its own. It
 * shares no code with what is tested.
 */
export const startStampAuthority = async (name = 'Quillfeather Time'): Promise<StampAuthority> => {
  const folder = mkdtempSync(join(tmpdir(), 'bayledger-stamps-'))
  makeCertificates(folder, name)
  const asked: { type: string; authorization: string | null }[] = []
  let manner: Manner = 'as-it-should'
  const server = createServer((request, reply) => {
    const parts: Buffer[] = []
    request.on('data', (part: Buffer) => parts.push(part))
    request.on('end', () => {
      asked.push({
        type: request.headers['content-type'] ?? '',
        authorization: request.headers.authorization ?? null,
      })
      if (manner === 'hangs') return
      reply.writeHead(manner === 'refuses-by-http' ? 503 : 200, {
        'content-type': 'application/timestamp-reply',
      })
      reply.end(answerOf(folder, manner, Buffer.concat(parts)))
    })
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const rootFile = join(folder, 'root.pem')
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/stamp`,
    root: readFileSync(rootFile, 'utf8'),
    rootFile,
    answer: (next) => {
      manner = next
    },
    asked,
    folder,
    stop: async () => {
      server.closeAllConnections()
      await new Promise((resolve) => server.close(resolve))
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

const answerOf = (folder: string, manner: Manner, request: Buffer): Buffer => {
  switch (manner) {
    case 'refuses-by-http':
      return Buffer.from('over there')
    case 'no-der':
      return Buffer.from('<html>sign in to this network</html>')
    case 'huge':
      return Buffer.alloc(4 * 1024 * 1024, 0x30)
    case 'another-nonce':
      // A good answer to a request of before.
      return stampOf(folder, withAnotherNonce(request))
    case 'another-imprint':
      return stampOf(folder, withAnotherImprint(request))
    case 'refuses':
      return stampOf(folder, Buffer.from([0x30, 0]))
    case 'cut-off':
      return stampOf(folder, request).subarray(0, 400)
    case 'no-usage':
      return signedWithoutUsage(folder, stampOf(folder, request))
    default:
      return stampOf(folder, request)
  }
}

/** The nonce lies last but for `certReq TRUE`, which takes three bytes. */
const withAnotherNonce = (request: Buffer): Buffer => {
  const changed = Buffer.from(request)
  changed[changed.length - 4] = (changed[changed.length - 4] ?? 0) ^ 1
  return changed
}

/** The digest's 32 bytes follow `OCTET STRING, 32`. */
const withAnotherImprint = (request: Buffer): Buffer => {
  const changed = Buffer.from(request)
  const at = changed.indexOf(Buffer.from([0x04, 0x20])) + 2
  changed[at] = (changed[at] ?? 0) ^ 1
  return changed
}

let files = 0
const freshFile = (folder: string): string => {
  files += 1
  return join(folder, `${files}.der`)
}
const written = (folder: string, bytes: Buffer): string => {
  const file = freshFile(folder)
  writeFileSync(file, bytes)
  return file
}

const stampOf = (folder: string, request: Buffer): Buffer =>
  openssl(folder, ['ts', '-reply', '-config', join(folder, 'ts.cnf'), '-queryfile', written(folder, request)])

/** The same stamp, signed by a certificate of the same root that is not for stamps. */
const signedWithoutUsage = (folder: string, reply: Buffer): Buffer => {
  const token = openssl(folder, ['ts', '-reply', '-in', written(folder, reply), '-token_out'])
  const info = openssl(folder, [
    ...['cms', '-verify', '-noverify', '-inform', 'DER', '-in', written(folder, token)],
  ])
  const signed = openssl(folder, [
    ...['cms', '-sign', '-binary', '-nodetach', '-cades', '-md', 'sha256', '-outform', 'DER'],
    ...['-econtent_type', '1.2.840.113549.1.9.16.1.4', '-signer', join(folder, 'no-usage.pem')],
    ...['-inkey', join(folder, 'authority-key.pem'), '-in', written(folder, info)],
  ])
  return openssl(folder, ['ts', '-reply', '-token_in', '-in', written(folder, signed)])
}

const makeCertificates = (folder: string, name: string): void => {
  const at = (file: string) => join(folder, file)
  writeFileSync(at('ts.cnf'), settings(folder))
  writeFileSync(at('serial'), '01')
  const newKey = ['-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256', '-nodes', '-keyout']
  writeFileSync(
    at('root.pem'),
    openssl(folder, [
      ...['req', '-x509', ...newKey, at('root-key.pem'), '-days', '30', '-subj', `/CN=Root of ${name}`],
    ]),
  )
  const request = written(
    folder,
    openssl(folder, ['req', '-new', ...newKey, at('authority-key.pem'), '-subj', `/CN=${name}`]),
  )
  for (const [file, usage] of [
    ['authority.pem', 'usage'],
    ['no-usage.pem', 'no_usage'],
  ] as const)
    writeFileSync(
      at(file),
      openssl(folder, [
        ...['x509', '-req', '-in', request, '-CA', at('root.pem'), '-CAkey', at('root-key.pem')],
        ...['-CAcreateserial', '-days', '20', '-extfile', at('ts.cnf'), '-extensions', usage],
      ]),
    )
}

const settings = (folder: string): string => `[tsa]
default_tsa = here
[here]
serial = ${folder}/serial
crypto_device = builtin
signer_cert = ${folder}/authority.pem
certs = ${folder}/root.pem
signer_key = ${folder}/authority-key.pem
signer_digest = sha256
default_policy = 1.2.3.4.1
digests = sha256
ess_cert_id_alg = sha256
[usage]
basicConstraints = critical,CA:FALSE
keyUsage = critical,digitalSignature
extendedKeyUsage = critical,timeStamping
[no_usage]
basicConstraints = critical,CA:FALSE
keyUsage = critical,digitalSignature
`

const openssl = (folder: string, args: readonly string[]): Buffer => {
  const out = freshFile(folder)
  const { status, output } = runOutsideTool('openssl', [...args, '-out', out])
  if (status !== 0) throw new Error(`openssl ${args.join(' ')}: ${output}`)
  return readFileSync(out)
}
