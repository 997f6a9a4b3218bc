import { addressOf } from '@bayledger/contract/endpoint'
import { getOrderPhoto } from '@bayledger/contract/photos'
import type { OrderState } from '@bayledger/ledger/state'
import { photos } from '@bayledger/wording/en/photos'
import { steps } from '@bayledger/wording/en/steps'
import { wheels } from '@bayledger/wording/en/wheels'
import { photoText } from '@bayledger/wording/photos'
import { useQuery } from '@tanstack/react-query'
import type { ReactNode } from 'react'
import type { ReadOrder } from '../../ledger/order.ts'
import { type Clock, clockTime } from '../../lib/format.ts'
import { orderPhotosQuery } from './queries.ts'
import './photo-figures.css'

export type Photo = OrderState['photos'][number]

type PhotoFiguresProps = {
  order: ReadOrder
  clock: Clock
  /** Addresses of pictures that lie on this device, by digest. */
  held?: ReadonlyMap<string, string>
  /** Below a photo's words. */
  beside?: (photo: Photo, words: string) => ReactNode
}

/** An order's photos with their words; one whose bytes are missing says so in its place. */
export function PhotoFigures({ order, clock, held = new Map(), beside }: PhotoFiguresProps) {
  const { state, orderId } = order
  const digests = state.photos.map(({ digest }) => digest)
  const query = useQuery({ ...orderPhotosQuery(orderId, digests), enabled: digests.length > 0 })
  const sourceOf = (digest: string): string | null =>
    held.get(digest) ??
    (query.data?.received.includes(digest) ? addressOf(getOrderPhoto.path, { orderId, digest }) : null)
  return (
    <ul className="photos">
      {state.photos.map((photo) => {
        const { digest, written } = photo
        const words = photoText(
          { photos, steps, wheels },
          photo,
          state.plan?.plan.steps ?? [],
          clockTime(photo.picture?.takenAt ?? written.writtenAt, clock),
        )
        const source = sourceOf(digest)
        return (
          <li key={written.entryId}>
            <figure className="photo">
              {source === null ? (
                <p className="photo-missing">{missingWords(digest, query.data)}</p>
              ) : (
                <img className="photo-picture" src={source} alt={words} loading="lazy" />
              )}
              <figcaption>
                {/* Read once: the picture has the same words. */}
                <span aria-hidden={source !== null || undefined}>{words}</span>
                {beside?.(photo, words)}
              </figcaption>
            </figure>
          </li>
        )
      })}
    </ul>
  )
}

const missingWords = (
  digest: string,
  states: { readonly received: readonly string[]; readonly erased: readonly string[] } | undefined,
): string => {
  if (states === undefined) return photos.notKnown
  return states.erased.includes(digest) ? photos.erased : photos.notReceived
}
