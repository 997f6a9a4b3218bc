import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { type Photo, PhotoFigures } from '../../../features/photos/photo-figures.tsx'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { useShopClock } from '../shop-clock.ts'
import type { OrderPart } from './order-part.ts'

/** The order's photos; the desk says which of them the customer sees. */
export function PhotosPart({ order }: OrderPart) {
  const clock = useShopClock()
  const write = useWriteEntries(order.orderId)
  const { state } = order
  if (state.photos.length === 0) return null
  const isOver = state.reports.length > 0 || state.ended !== null
  const share = ({ written, shared }: Photo) =>
    write.mutate({
      entries: [draftEntry(order.orderId, 'photo.shared', { photoId: written.entryId, shared: !shared })],
    })
  return (
    <Section title="Photos" id="photos">
      {write.error === null ? null : <ProblemNotice problem={problemText(write.error)} />}
      <PhotoFigures
        order={order}
        clock={clock}
        beside={(photo, words) => (
          <>
            {photo.shared ? <p>The customer sees it.</p> : null}
            {isOver ? null : (
              <p>
                <Button
                  busy={write.isPending}
                  aria-label={`${photo.shared ? 'Hide from the customer' : 'Show to the customer'}: ${words}`}
                  onClick={() => share(photo)}
                >
                  {photo.shared ? 'Hide from the customer' : 'Show to the customer'}
                </Button>
              </p>
            )}
          </>
        )}
      />
    </Section>
  )
}
