import { isIP } from 'node:net'
import { AppError } from '../../../core/app-error.ts'
import type { CalledFrom } from '../../../core/called-from.ts'

/** Where a passkey works: scheme, name and port of the page, and the name alone. */
export type Place = { readonly origin: string; readonly rpId: string }

/**
 * Passkeys belong to the name under which the desk is open: those of one name are not found under another.
 * @throws PASSKEY_NEEDS_NAME at an address of numbers, for which browsers make none
 */
export const placeOf = ({ origin, isThisMachine }: CalledFrom, publicAddress: string): Place => {
  const { hostname, port, protocol } = new URL(origin)
  if (!isNumbers(hostname)) return { origin, rpId: hostname }
  const named = new URL(publicAddress)
  const here = `${protocol}//localhost${port === '' ? '' : `:${port}`}`
  const other = isThisMachine || isNumbers(named.hostname) ? here : named.origin
  throw new AppError({ code: 'PASSKEY_NEEDS_NAME', address: origin, other: `${other}/desk` })
}

const isNumbers = (hostname: string): boolean => isIP(hostname.replace(/^\[|\]$/g, '')) !== 0
