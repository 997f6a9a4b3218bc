import { isIP } from 'node:net'
import { AppError } from '../../core/app-error.ts'
import type { CalledFrom } from '../../core/called-from.ts'

/** Long enough to fetch a key from a coat (Web Authentication, section 15.1: five to ten minutes with user verification). */
export const challengeMs = 5 * 60_000

/** Of random bits; Web Authentication, section 13.4.3, asks for 16 bytes at least. */
export const challengeBytes = 32

export const mostPasskeys = 10

/** What a challenge is for; one that was made for one purpose is none for another. */
export type Purpose = 'sign-in' | 'proof' | 'adding'

/** Of whom a challenge is: a session, or a browser in which nobody is signed in. */
export type Holder = { readonly sessionId: string } | { readonly browserHash: string }

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
