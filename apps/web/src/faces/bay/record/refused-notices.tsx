import { Link } from 'react-router'
import type { Refused } from '../../../ledger/parcel.ts'
import { bayOrderPath } from '../../../lib/paths.ts'
import { Button } from '../../../ui/button.tsx'
import { keepDraft } from '../form/draft-store.ts'
import { bayOutbox, useOutbox } from './bay-outbox.ts'
import './refused-notices.css'

/**
 * What the ledger did not take after the screen had gone on: why, and what to do. It stays until somebody writes it again
 * or discards it. `onAgain` opens the form under a key, or gives `null` where no screen shows it any more.
 */
export function RefusedNotices({
  orderId,
  onAgain,
}: {
  orderId: string
  onAgain: (formKey: string) => (() => void) | null
}) {
  const refused = useOutbox((content) => content.refused).filter(({ parcel }) => parcel.orderId === orderId)
  return refused.map((one) => {
    const again = one.parcel.form === null ? null : onAgain(one.parcel.form.key)
    return (
      <RefusedNotice key={one.parcel.entries[0]?.id} one={one}>
        {again === null ? null : (
          <Button
            onClick={() => {
              bayOutbox.dismiss(one)
              again()
            }}
          >
            Write it again
          </Button>
        )}
        <Button onClick={() => discard(one)}>I have read it: discard</Button>
      </RefusedNotice>
    )
  })
}

/** What was not taken of any vehicle, where the vehicles are listed. */
export function RefusedTray() {
  return useOutbox((content) => content.refused).map((one) => (
    <RefusedNotice key={one.parcel.entries[0]?.id} one={one}>
      <Link to={bayOrderPath(one.parcel.orderId)} className="button button-plain">
        Open the vehicle
      </Link>
    </RefusedNotice>
  ))
}

function RefusedNotice({ one, children }: { one: Refused; children: React.ReactNode }) {
  const { title, detail } = one.problem
  return (
    <div className="refused-notice" role="alert">
      <p>
        <strong>Not taken: {one.parcel.says}.</strong> {title} {detail}
        {one.parcel.form === null ? '' : ' It is filled in again as it was.'}
      </p>
      {children}
    </div>
  )
}

const discard = (one: Refused): void => {
  if (one.parcel.form !== null) keepDraft(one.parcel.form.key, undefined)
  bayOutbox.dismiss(one)
}
