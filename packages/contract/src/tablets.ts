import * as z from 'zod/mini'
import { csvEndpoints } from './csv-endpoints.ts'
import { Unsent } from './devices.ts'
import { Id, Instant, line } from './identity.ts'
import { recordEndpoints } from './record.ts'

/** What an owner says of a tablet. Once it is put out it stays out: it is enrolled again with a new code. */
export const TabletContent = z.strictObject({ name: line(40), locationId: Id, isOut: z.boolean() })
export type TabletContent = z.infer<typeof TabletContent>

/**
 * `lastSeenAt`: when somebody last worked on it with the server in reach. `heldOrders`: open orders that it goes on holding, to
 * which it may still deliver. `refusedEntries`: what it delivered, was refused and nobody has settled.
 * `unsent`: what it kept and had not sent when it had contact last; `null`: it has never said.
 */
export const TabletFacts = z.strictObject({
  enrolledAt: Instant,
  lastSeenAt: z.nullable(Instant),
  heldOrders: z.int(),
  refusedEntries: z.int(),
  unsent: z.nullable(z.extend(Unsent, { toldAt: Instant })),
})
export type TabletFacts = z.infer<typeof TabletFacts>

/** A tablet is added by its enrollment (`enrollDevice`), not here: the route that creates is not served. */
export const tablets = recordEndpoints({
  name: { one: 'Tablet', all: 'Tablets' },
  words: { one: 'tablet', all: 'tablets' },
  path: '/api/tablets',
  roles: ['manager', 'owner'],
  content: TabletContent,
  facts: TabletFacts,
  proof: 'recent',
})

/** A file renames and moves tablets; it adds none and puts none out. */
export const tabletsCsv = csvEndpoints({
  name: 'Tablets',
  words: 'tablets',
  path: '/api/tablets',
  roles: ['manager', 'owner'],
  proof: 'recent',
})
