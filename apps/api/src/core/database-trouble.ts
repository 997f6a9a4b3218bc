import { databaseCode } from './constraint-named.ts'

/**
 * Why the database cannot do what it was asked, through no fault of the request: it has no room left (PostgreSQL 53100), gave up
 * a statement or a wait for a lock (57014, 55P03), or is refused, dropped, full or shutting down (57P, 08, 53, 55000; Prisma
 * P1001, P1017, P2024, P2028). `null`: it is something else.
 */
export const databaseTrouble = (error: Error): { readonly why?: 'disk-full' | 'too-slow' } | null => {
  const code = databaseCode(error)
  if (code === '53100') return { why: 'disk-full' }
  if (code === '57014' || code === '55P03') return { why: 'too-slow' }
  return /^(ECONNREFUSED|ECONNRESET|EPIPE|57P0\d|08\d{3}|53\d{3}|55000|P1001|P1017|P2024|P2028)$/.test(
    code,
  ) || /Connection terminated|timeout exceeded when trying to connect/.test(error.message)
    ? {}
    : null
}
