import { Button } from '../../../ui/button.tsx'
import { bayOutbox, useOutbox } from './bay-outbox.ts'
import './refused-notices.css'

/** What the ledger did not take after the screen had gone on: it stays until someone has read it. */
export function RefusedNotices({ orderId }: { orderId: string }) {
  const refused = useOutbox().refused.filter(({ parcel }) => parcel.orderId === orderId)
  return refused.map((one) => {
    const { title, detail } = one.problem
    return (
      <div key={one.parcel.entries[0]?.id} className="refused-notice" role="alert">
        <p>
          <strong>Not taken: {one.parcel.says}.</strong> {title} {detail}
          {one.parcel.form === null ? '' : ' It is filled in again as it was.'}
        </p>
        <Button onClick={() => bayOutbox.dismiss(one)}>I have read it</Button>
      </div>
    )
  })
}
