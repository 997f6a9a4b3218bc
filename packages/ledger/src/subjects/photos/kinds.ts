import { StepKey } from '@bayledger/reckoning/step'
import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'
import { earlierVersion, kind } from '../../kind.ts'
import { deskRoles, roles } from '../../role.ts'
import { Digest, Id, Instant } from '../../text.ts'

/** The largest photo that is taken, in bytes: 40 MB. */
export const mostPhotoBytes = 40_000_000

const earlierSubjects = [
  'arrival',
  'damage',
  'placard',
  'stem',
  'sensor',
  'inside',
  'light',
  'other',
] as const

const attached = {
  wheel: z.nullable(WheelPosition),
  /** The step of the plan at which it was taken; it closes no step. */
  stepKey: z.nullable(StepKey),
  /** SHA-256 of the bytes as the tablet stored them; the bytes may come later. */
  digest: Digest,
  byteLength: z.int().check(z.positive()),
}

/** What is photographed, where no step says so. */
export const PhotoSubject = z.enum([...earlierSubjects, 'not-right'])
export type PhotoSubject = z.infer<typeof PhotoSubject>

export const PhotoType = z.enum(['image/jpeg', 'image/png', 'image/webp'])
export type PhotoType = z.infer<typeof PhotoType>

export const photoKinds = {
  /** A photo of what is not right names that entry in its `restsOn`. */
  'photo.attached': kind(
    z.strictObject({
      ...attached,
      subject: PhotoSubject,
      /** Width and height in pixels, and when it was taken by the tablet's clock; `null` in the first version. */
      picture: z.nullable(
        z.strictObject({
          mediaType: PhotoType,
          width: z.int().check(z.positive()),
          height: z.int().check(z.positive()),
          takenAt: Instant,
        }),
      ),
    }),
    {
      roles,
      earlier: [
        earlierVersion(z.strictObject({ ...attached, subject: z.enum(earlierSubjects) }), (payload) => ({
          ...payload,
          picture: null,
        })),
      ],
    },
  ),
  /** Whether the customer sees a photo on the page behind their link. `photoId`: the entry that attached it. */
  'photo.shared': kind(z.strictObject({ photoId: Id, shared: z.boolean() }), {
    roles: deskRoles,
    writtenWhere: 'server',
  }),
}
