import type { StaffActor } from './actor.ts'
import { AppError } from './app-error.ts'

/** What must still hold at the moment of writing: the writer's session, or the enrollment of the tablet that hands in. */
export type Authority =
  | { readonly by: 'session'; readonly sessionId: string }
  | { readonly by: 'tablet'; readonly deviceId: string }

/** Whose entries are delivered, from where, and under what. */
export type Writer = {
  readonly staffId: string
  readonly deviceId: string | null
  readonly from: 'desk' | 'bay'
  readonly authority: Authority
}

/** Whoever is signed in delivers what they wrote. */
export const writerOf = ({ staffId, deviceId, kind, sessionId }: StaffActor): Writer => ({
  staffId,
  deviceId,
  from: kind,
  authority: { by: 'session', sessionId },
})

/** The problem of a writer whose session is over, or whose tablet was put out. */
export const authorityOver = ({ by }: Authority): AppError =>
  new AppError({ code: by === 'session' ? 'SESSION_EXPIRED' : 'DEVICE_UNKNOWN' })

export const sessionsIn = (authorities: readonly Authority[]): string[] => [
  ...new Set(authorities.flatMap((one) => (one.by === 'session' ? [one.sessionId] : []))),
]

export const tabletsIn = (authorities: readonly Authority[]): string[] => [
  ...new Set(authorities.flatMap((one) => (one.by === 'tablet' ? [one.deviceId] : []))),
]
