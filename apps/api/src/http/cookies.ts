import '@fastify/cookie'
import type { FastifyReply, FastifyRequest } from 'fastify'

/**
 * What a browser of ours may hold: one cookie a face, so that two faces in one browser do not oust each other. `device` is a
 * tablet's enrollment, `browser` says that somebody has signed in here before.
 */
export type CookieName = 'desk' | 'bay' | 'device' | 'customer' | 'browser'

export type CookieChange = { readonly name: CookieName; readonly token: string; readonly seconds: number }

/** With TLS the name carries `__Host-`: no other host and no path of ours can set or shadow it (RFC 6265bis). */
const nameOf = (name: CookieName, tls: boolean): string => `${tls ? '__Host-' : ''}bayledger-${name}`

export const readCookie = (request: FastifyRequest, name: CookieName, tls: boolean): string | null =>
  request.cookies[nameOf(name, tls)] ?? null

/** Customers arrive by a link in a message, so their cookie is Lax; staff do not, so theirs is Strict. */
export const writeCookie = (
  reply: FastifyReply,
  { name, token, seconds }: CookieChange,
  tls: boolean,
): void => {
  reply.setCookie(nameOf(name, tls), token, {
    path: '/',
    httpOnly: true,
    secure: tls,
    sameSite: name === 'customer' ? 'lax' : 'strict',
    maxAge: seconds,
  })
}
