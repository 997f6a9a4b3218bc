import { deskRoles, judgeRoles, type Role } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { csvPatienceSeconds, csvReply } from './csv.ts'
import { endpoint } from './endpoint.ts'
import { Day, Id } from './identity.ts'

/**
 * From the beginning of one day to the end of another, each by the clock of the place that the order belongs to; of one
 * place, or of all.
 */
export const ExportRange = z.strictObject({ from: Day, to: Day, locationId: z.optional(Id) })
export type ExportRange = z.infer<typeof ExportRange>

const exportOf = <const Name extends string, const Path extends `/api/exports/${string}.csv`>(
  name: Name,
  path: Path,
  words: string,
  roles: readonly Role[],
) =>
  endpoint({
    operationId: `export${name}`,
    summary: `${words} of a range of days, as CSV.`,
    method: 'GET',
    path,
    access: { who: 'desk', roles },
    query: ExportRange,
    patienceSeconds: csvPatienceSeconds,
    replies: { 200: csvReply },
    problems: ['RECORD_NOT_FOUND', 'FIELDS_INVALID'],
  })

/** What goes out of the ledger as a file. None of it comes back in. */
export const exports = {
  orders: exportOf('Orders', '/api/exports/orders.csv', 'The orders that were opened', deskRoles),
  readings: exportOf(
    'Readings',
    '/api/exports/readings.csv',
    'The pressures and sensors that were read',
    judgeRoles,
  ),
  torque: exportOf('Torque', '/api/exports/torque.csv', 'The torque log', judgeRoles),
  parts: exportOf('Parts', '/api/exports/parts.csv', 'The parts that were used', deskRoles),
  sales: exportOf('Sales', '/api/exports/sales.csv', 'What was sold on orders that ended', [
    'manager',
    'owner',
  ]),
}
export type ExportKind = keyof typeof exports
