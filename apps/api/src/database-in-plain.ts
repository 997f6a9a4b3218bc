import { isLoopback } from './config.ts'

/** The values of `sslmode` with which node-postgres encrypts and checks who answers. */
const checked: readonly (string | null)[] = ['require', 'verify-ca', 'verify-full']

/** The same where it is told to read `sslmode` as PostgreSQL's own library does, to which `require` is TLS with anybody. */
const checkedByLibrary: readonly (string | null)[] = ['verify-ca', 'verify-full']

const isChecked = (parameters: URLSearchParams): boolean =>
  (parameters.get('uselibpqcompat') === 'true' ? checkedByLibrary : checked).includes(
    parameters.get('sslmode'),
  )

/**
 * What to say where the database is on another machine and its address does not ask for TLS; `null` where nothing is to be
 * said. Without `sslmode` node-postgres sends everything in plain (pg-connection-string, README, "sslmode"). The address is not
 * shown, because it may hold a password.
 */
export const databaseInPlain = (name: string, address: string | null): string | null => {
  if (address === null) return null
  const { hostname, searchParams } = new URL(address)
  const host = (searchParams.get('host') ?? hostname).replace(/^\[(.*)\]$/, '$1')
  const isHere = host === '' || host.startsWith('/') || isLoopback(host)
  if (isHere || isChecked(searchParams)) return null
  return `${name} names a database on another machine and does not require a checked TLS connection, so that others on the network may read or change what the shop writes. Add sslmode=verify-full to the address.`
}
