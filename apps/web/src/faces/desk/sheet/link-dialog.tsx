import { createLink } from '@bayledger/contract/links'
import type { IssuedEstimate } from '@bayledger/ledger/state'
import { useMutation, useQuery } from '@tanstack/react-query'
import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { linkMessage, printedLink } from '../../../features/links/link-message.ts'
import { settingsQuery } from '../../../features/settings/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { TextArea, TextField } from '../../../ui/text-field.tsx'
import { useShopClock } from '../shop-clock.ts'
import type { OrderPart } from './order-part.ts'
import { QrCode } from './qr-code.tsx'
import { useCustomerLanguage } from './use-customer-language.ts'
import '../print/print-sheet.css'

/**
 * The customer's own page, by an address that is shown once: read out, sent, printed, or held to a phone's camera. `issued`: the
 * estimate that it shows, which is noted; `null` where it is for the report.
 */
export function LinkDialog({
  order,
  issued,
  onClose,
}: OrderPart & { issued: IssuedEstimate | null; onClose: () => void }) {
  const clock = useShopClock()
  const settings = useQuery(settingsQuery)
  const write = useWriteEntries(order.orderId)
  const language = useCustomerLanguage(order.customer.language)
  const link = useMutation({
    mutationFn: async () => {
      const made = await call(createLink, { params: { orderId: order.orderId } })
      if (issued !== null)
        await write.mutateAsync({
          entries: [
            draftEntry(order.orderId, 'estimate.shown', {
              revision: issued.scope.revision,
              channel: 'link',
              linkId: made.linkId,
            }),
          ],
        })
      return made
    },
  })
  const about = issued === null ? 'report' : 'estimate'
  const facts = {
    ...{ name: order.customer.name, vehicle: order.vehicle.description },
    ...{ shop: settings.data?.shop.name ?? '', telephone: null, lines: [] },
    link: link.data?.address ?? '',
  }
  const isReady = link.data !== undefined && language !== null
  const message = isReady ? linkMessage(settings.data?.settings ?? [], about, facts, language) : null
  const printed = isReady ? printedLink(settings.data?.settings ?? [], about, facts, language) : []
  return (
    <Dialog title="The customer’s link" onClose={onClose}>
      <div className="stack">
        {link.data === undefined ? (
          <>
            <p>
              Whoever opens it sees the findings{' '}
              {issued === null
                ? `and the report of ${order.customer.name}`
                : `and this estimate of ${order.customer.name}, and can answer and sign`}
              . It is shown once.
            </p>
            {link.isError ? <ProblemNotice problem={problemText(link.error)} /> : null}
            <Button look="main" busy={link.isPending} onClick={() => link.mutate()}>
              Make the link
            </Button>
          </>
        ) : (
          <>
            <TextField label="Address" exact readOnly value={link.data.address} onChange={() => undefined} />
            {message === null ? null : (
              <TextArea label="Message" rows={4} readOnly value={message} onChange={() => undefined} />
            )}
            <div className="print-sheet">
              {printed.map((words) => (
                <p key={words} className="print-words">
                  {words}
                </p>
              ))}
              <QrCode text={link.data.address} label="The link, for a phone’s camera" />
            </div>
            <div className="row">
              <Button look="main" onClick={() => void navigator.clipboard?.writeText(link.data.address)}>
                Copy the address
              </Button>
              <Button onClick={() => window.print()}>Print it</Button>
              {message === null ? null : (
                <Button onClick={() => void navigator.clipboard?.writeText(message)}>Copy the message</Button>
              )}
            </div>
            <p className="quiet">
              Good until {clockTimeOrDay(link.data.expiresAt, new Date().toISOString(), clock)}.
            </p>
          </>
        )}
      </div>
    </Dialog>
  )
}
