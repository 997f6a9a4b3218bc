import type { Deps } from '../deps.ts'
import type { StaffActor } from './actor.ts'
import { noteSecurityEvent } from './security-events.ts'

/** Keeps that somebody took a file out of the shop, by its name. */
export const noteExport = (deps: Deps, { staffId }: StaffActor, file: string): Promise<void> =>
  noteSecurityEvent(deps, deps.prisma, { kind: 'file-exported', staffId, details: { file } })
