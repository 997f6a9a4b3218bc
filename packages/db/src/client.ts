import { PrismaPg } from '@prisma/adapter-pg'
import type { Pool } from 'pg'
import { PrismaClient } from './generated/client.ts'

export type { PrismaClient } from './generated/client.ts'

/** Milliseconds. Prisma's own 5 s are too short for the first start on a slow or busy machine, which then has no demo. */
const patience = 60_000

/** The Prisma client for ordinary reads and writes, on a pool of its own or on one that is shared. */
export function openClient(source: string | Pool): PrismaClient {
  return new PrismaClient({
    adapter: new PrismaPg(source),
    transactionOptions: { maxWait: patience, timeout: patience },
  })
}
