import { chmodSync, existsSync, readFileSync } from 'node:fs'
import { isIP } from 'node:net'
import { join } from 'node:path'
import { ConfigProblem, readPlaces } from '../config.ts'
import { writeDurably } from '../core/durable-file.ts'
import { type KeyPair, makeAuthority, makeHostCertificate, mayVouchFor } from '../host-certificate.ts'

/**
 * `npm run certificate -- <host> [<another name or address>]`: lets tablets in by HTTPS. Makes the shop's own
 * authority once, then a certificate for this host, and says what to do on the tablet.
 * `npm run certificate -- rotate` is about another key: see `rotate-signing-key.ts`.
 */
if (process.argv[2] === 'rotate') {
  const { rotate } = await import('./rotate-signing-key.ts')
  await rotate(process.argv[3])
  process.exit()
}
const hosts = process.argv.slice(2)
const [first, ...others] = hosts
const isHost = (text: string) =>
  isIP(text) === 4 || /^[a-z0-9]([a-z0-9-]*[a-z0-9])?(\.[a-z0-9]([a-z0-9-]*[a-z0-9])?)*$/i.test(text)

if (first === undefined || !hosts.every(isHost)) {
  console.error(
    'Give the name or the IPv4 address by which tablets reach this machine, and further ones after it:\n  npm run certificate -- desk.shop.lan 192.168.1.20',
  )
  process.exit(2)
}

const config = (() => {
  try {
    return readPlaces()
  } catch (error) {
    console.error(error instanceof ConfigProblem ? error.message : error)
    process.exit(2)
  }
})()

const folder = join(config.dataFolder, 'certificates')
const file = (name: string) => join(folder, name)

/** The key first, so that a certificate never lies there without it. Both outlast a power cut. */
const keep = (name: string, { certificatePem, privateKeyPem }: KeyPair): void => {
  writeDurably(file(`${name}-key.pem`), privateKeyPem)
  writeDurably(file(`${name}.pem`), certificatePem)
  // No secret, and read by whoever brings it onto a tablet.
  chmodSync(file(`${name}.pem`), 0o644)
}

const now = new Date()
if (!existsSync(file('authority.pem')))
  keep('authority', await makeAuthority(`Bayledger authority of ${first}`, now, hosts))
const authority: KeyPair = {
  certificatePem: readFileSync(file('authority.pem'), 'utf8'),
  privateKeyPem: readFileSync(file('authority-key.pem'), 'utf8'),
}
const foreign = hosts.filter((host) => mayVouchFor(authority, host.toLowerCase()) === 'no')
if (foreign.length > 0) {
  console.error(
    `The authority in ${folder} may not sign for ${foreign.join(', ')}: it is limited to local networks and to the names that it was made for. Move authority.pem and authority-key.pem away, run this again with all names, and install the new authority on each tablet.`,
  )
  process.exit(1)
}
if (mayVouchFor(authority, 'localhost') === 'unlimited')
  console.error(
    `The authority in ${folder} was made by an earlier version and may sign for any name. Better move authority.pem and authority-key.pem away, run this again, and install the new authority on each tablet.`,
  )
keep('host', await makeHostCertificate(authority, [first, ...others, 'localhost', '127.0.0.1'], now))

console.log(`Made ${file('host.pem')} for ${hosts.join(', ')}, good for 397 days. Before they end, run this again and restart the service.

Start the service with it:
  TLS_CERT=${file('host.pem')} TLS_KEY=${file('host-key.pem')} PUBLIC_ADDRESS=https://${first}:${config.port} npm start

On each tablet and each other computer, once (one that has authority.pem already needs nothing):
  1. Bring ${file('authority.pem')} onto it (by cable or mail; it holds no secret).
  2. In the settings, under security, install it as a certificate authority, and where the
     system asks for it, switch on full trust for it.
  3. On a tablet, open https://${first}:${config.port}/bay and type the code that the desk makes.

Keep ${file('authority-key.pem')} to yourself: whoever has it can pass for this host.`)
