import { Prisma } from '@bayledger/db/generated/client'

/** The name of the constraint that a write broke; `null` when the failure was another one. */
export const constraintNamed = (error: unknown): string | null => {
  if (error instanceof Prisma.PrismaClientKnownRequestError) {
    const text = JSON.stringify(error.meta ?? {})
    return /"(?:originalMessage|message)":"[^"]*constraint \\"([a-z_]+)\\"/.exec(text)?.[1] ?? null
  }
  return error instanceof Error && 'constraint' in error && typeof error.constraint === 'string'
    ? error.constraint
    : null
}
