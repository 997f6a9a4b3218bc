import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { PayloadOf } from '@bayledger/ledger/registry'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { How, OrderPen } from './order-pen.ts'

type PhotoName = 'door-label' | 'sensor-number' | 'tire-inside' | 'sidewall' | 'bulge' | 'nail'

/** All photos of the demo are drawn by us (`pictures/draw.ts`) and show nothing that exists. */
export const photoSize = { width: 960, height: 720 } as const

type Taken = {
  readonly photo: PhotoName
  readonly subject: PayloadOf<'photo.attached'>['subject']
  readonly wheel: WheelPosition | null
  readonly stepKey?: string
}

/** Attaches a photo to the order; its bytes go to the server after the entries. */
export const takePhoto = (pen: OrderPen, { photo, subject, wheel, stepKey }: Taken, how: How) => {
  const bytes = readFileSync(join(import.meta.dirname, 'pictures', `${photo}.jpg`))
  const digest = createHash('sha256').update(bytes).digest('hex')
  pen.carries({ digest, bytes })
  return pen.write(
    'photo.attached',
    {
      wheel,
      stepKey: stepKey ?? null,
      subject,
      digest,
      byteLength: bytes.length,
      picture: { mediaType: 'image/jpeg', ...photoSize, takenAt: pen.calendar.at(how.at) },
    },
    how,
  )
}
