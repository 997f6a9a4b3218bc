import * as z from 'zod/mini'
import { BackupState } from './backup-state.ts'
import { endpoint } from './endpoint.ts'

const count = z.int()

/** What of a shop is there, counted when it is asked: nothing of it is ticked off by hand. */
export const Checklist = z.strictObject({
  /** Who works here; `bay`: those who may work on a vehicle and have a PIN. */
  people: z.strictObject({ working: count, bay: count }),
  /** Those that may be used today. */
  instruments: z.strictObject({ wrenches: count, gauges: count }),
  /** Of the price book; the first one is what the program brought along. */
  pricesVersion: count,
  tablets: count,
  backups: BackupState,
  hasOrders: z.boolean(),
})
export type Checklist = z.infer<typeof Checklist>

export const getChecklist = endpoint({
  operationId: 'getChecklist',
  summary: 'What a new shop has of what its first orders need.',
  method: 'GET',
  path: '/api/checklist',
  access: { who: 'desk', roles: ['manager', 'owner'] },
  replies: { 200: Checklist },
  problems: [],
})
