import * as z from 'zod/mini'

/** How `pg` and Prisma's adapter for it (7.10) each report a broken constraint. */
const FromPg = z.object({ constraint: z.string() })
const FromPrisma = z.object({
  meta: z.object({
    driverAdapterError: z.object({
      cause: z.object({ constraint: z.object({ index: z.string() }) }),
    }),
  }),
})

/** The name of the constraint that a write broke; `null` when the failure was another one. */
export const constraintNamed = (error: unknown): string | null => {
  const pg = FromPg.safeParse(error)
  if (pg.success) return pg.data.constraint
  const prisma = FromPrisma.safeParse(error)
  return prisma.success ? prisma.data.meta.driverAdapterError.cause.constraint.index : null
}
