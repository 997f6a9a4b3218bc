import { listTransfers, receiveTransfer, type StockTransfer } from '@bayledger/contract/stock'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { type Clock, clockTime, day } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { type RecordRow, recordFaultsOf } from '../../../ui/record/record-rows.ts'
import { RowField } from '../../../ui/record/row-field.tsx'
import type { RowOption, RowValues } from '../../../ui/rows/rows.ts'
import { Section } from '../../../ui/section.tsx'

type OnTheWayProps = { places: readonly RowOption[]; clock: Clock }

/** Parts that left one place and have not arrived at the other; nothing where there are none. */
export function TransfersOnTheWay({ places, clock }: OnTheWayProps) {
  const list = useQuery({
    queryKey: ['transfers'],
    queryFn: ({ signal }) => call(listTransfers, { signal }),
  })
  if (list.isError) return <ProblemNotice problem={problemText(list.error)} />
  if (list.data === undefined || list.data.transfers.length === 0) return null
  return (
    <Section title="On the way between places">
      <ul className="record-history">
        {list.data.transfers.map((transfer) => (
          <li key={transfer.transferId}>
            <Arrival transfer={transfer} places={places} clock={clock} />
          </li>
        ))}
      </ul>
    </Section>
  )
}

function Arrival({ transfer, places, clock }: OnTheWayProps & { transfer: StockTransfer }) {
  const client = useQueryClient()
  const { quantity: sent, partNumber, lot, sentAt } = transfer
  const [values, setValues] = useState<RowValues>({ quantity: String(sent) })
  const [key, setKey] = useState(() => crypto.randomUUID())
  const nameOf = (id: string) => places.find(({ value }) => value === id)?.label ?? 'another place'
  const arrived = Number(values.quantity ?? '')
  const rows: RecordRow[] = [
    {
      kind: 'number',
      key: 'quantity',
      label: `How many of ${partNumber} arrived`,
      unit: '',
      low: 0,
      high: sent,
    },
    ...(arrived < sent ? [{ kind: 'text', key: 'words', label: 'What became of the rest' } as const] : []),
  ]
  const faults = recordFaultsOf(rows, values)
  const saving = useMutation({
    mutationFn: () =>
      call(receiveTransfer, {
        params: { transferId: transfer.transferId },
        body: { quantity: arrived, words: arrived < sent ? (values.words ?? '') : null },
        idempotencyKey: key,
      }),
    onSettled: () =>
      Promise.all(
        [['stock-items'], ['transfers'], ['stock']].map((queryKey) => client.invalidateQueries({ queryKey })),
      ),
  })
  return (
    <form
      className="record-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        if (Object.keys(faults).length === 0) saving.mutate()
      }}
    >
      <p>
        {sent} × {partNumber} from {nameOf(transfer.fromLocationId)} to {nameOf(transfer.toLocationId)}, sent{' '}
        {day(sentAt, new Date().toISOString(), clock)}, {clockTime(sentAt, clock)}
        {lot === null ? '' : ` · lot ${lot}`}
      </p>
      {rows.map((row) => (
        <RowField
          key={row.key}
          row={row}
          value={values[row.key] ?? ''}
          fault={saving.isIdle ? undefined : faults[row.key]}
          onChange={(value) => {
            setValues({ ...values, [row.key]: value })
            setKey(crypto.randomUUID())
          }}
        />
      ))}
      {saving.isError ? <ProblemNotice problem={problemText(saving.error)} /> : null}
      <div className="row">
        <Button type="submit" busy={saving.isPending} whyNot={Object.values(faults)[0]}>
          It arrived
        </Button>
      </div>
    </form>
  )
}
