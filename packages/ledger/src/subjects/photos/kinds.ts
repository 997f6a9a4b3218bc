import { StepKey } from '@bayledger/reckoning/step'
import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'
import { kind } from '../../kind.ts'
import { roles } from '../../role.ts'
import { Digest } from '../../text.ts'

export const photoKinds = {
  /** `digest` is of the photo's bytes as the tablet stored them; the bytes may come later. */
  'photo.attached': kind(
    z.strictObject({
      wheel: z.nullable(WheelPosition),
      stepKey: z.nullable(StepKey),
      subject: z.enum(['arrival', 'damage', 'placard', 'stem', 'sensor', 'inside', 'light', 'other']),
      digest: Digest,
      byteLength: z.int().check(z.positive()),
    }),
    { roles },
  ),
}
