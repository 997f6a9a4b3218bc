import * as z from 'zod/mini'

/** How `pg` and Prisma's adapter for it (7.10) each report what the database refused. */
const FromPg = z.object({ constraint: z.string() })
const fromPrisma = <T extends z.ZodMiniType>(cause: T) =>
  z.object({ meta: z.object({ driverAdapterError: z.object({ cause }) }) })
const ConstraintFromPrisma = fromPrisma(z.object({ constraint: z.object({ index: z.string() }) }))
const CodeFromPrisma = fromPrisma(z.object({ originalCode: z.string() }))

/** The name of the constraint that a write broke; `null` when the failure was another one. */
export const constraintNamed = (error: unknown): string | null => {
  const pg = FromPg.safeParse(error)
  if (pg.success) return pg.data.constraint
  const prisma = ConstraintFromPrisma.safeParse(error)
  return prisma.success ? prisma.data.meta.driverAdapterError.cause.constraint.index : null
}

/** The code of PostgreSQL (manual, appendix A), of the network or of Prisma by which an error says what it is; `''`: none. */
export const databaseCode = (error: Error): string => {
  const prisma = CodeFromPrisma.safeParse(error)
  if (prisma.success) return prisma.data.meta.driverAdapterError.cause.originalCode
  return 'code' in error ? String(error.code) : ''
}
