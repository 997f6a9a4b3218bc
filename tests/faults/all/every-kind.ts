import type { FaultKind } from './fault-kind.ts'
import { clockJumps } from './kinds/clock-jumps.ts'
import { diskFull } from './kinds/disk-full.ts'
import { mailServerDown } from './kinds/mail-server-down.ts'
import { poolExhausted } from './kinds/pool-exhausted.ts'
import { postgresKilled } from './kinds/postgres-killed.ts'
import { powerCut } from './kinds/power-cut.ts'
import { serverKilled } from './kinds/server-killed.ts'
import { slowDatabase } from './kinds/slow-database.ts'
import { twoServers } from './kinds/two-servers.ts'

/** Kinds that need nothing but this program. */
export const kindsAnywhere: readonly FaultKind[] = [
  serverKilled,
  postgresKilled,
  twoServers,
  poolExhausted,
  slowDatabase,
  clockJumps,
  mailServerDown,
]

/** Kinds that need a disk of their own: root on Linux. */
export const kindsOnADisk: readonly FaultKind[] = [powerCut, diskFull]
