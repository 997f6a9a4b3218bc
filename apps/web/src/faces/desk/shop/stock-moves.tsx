import { changeStock, listStockChanges, type StockChange, type StockItem } from '@bayledger/contract/stock'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { Link } from 'react-router'
import { call } from '../../../lib/api-client.ts'
import { type Clock, clockTime, day, money } from '../../../lib/format.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { recordFaultsOf } from '../../../ui/record/record-rows.ts'
import { RowField } from '../../../ui/record/row-field.tsx'
import type { RowOption, RowValues } from '../../../ui/rows/rows.ts'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { changeOf, moveRows, moves } from './stock-move-rows.ts'

type StockMovesProps = { item: StockItem; places: readonly RowOption[]; clock: Clock }

/** What moved a part and what moves it now: received, counted, sent to another place, scrapped, cores given back. */
export function StockMoves({ item, places, clock }: StockMovesProps) {
  const { facts, content } = item
  const changes = useQuery({
    queryKey: ['stock-changes', item.id],
    queryFn: ({ signal }) => call(listStockChanges, { params: { id: item.id }, signal }),
  })
  return (
    <Section title="How many there are">
      <div className="stack">
        <p>
          <strong>{facts.onHand} on hand</strong>
          {facts.onTheWay > 0 ? `, ${facts.onTheWay} on the way here` : ''}.{' '}
          {facts.suggestedMinimum === null
            ? `${facts.drawnIn90Days} were drawn in 90 days.`
            : `${facts.drawnIn90Days} were drawn in 90 days; keep ${facts.suggestedMinimum} for the week of the first freeze.`}
          {facts.coresOwed > 0 ? ` ${facts.coresOwed} old parts are owed${owedWords(item)}.` : ''}
        </p>
        {facts.promised.map(({ orderId, orderNumber, promisedAt }) => (
          <p key={orderId}>
            Promised to <Link to={deskOrderPath(orderId)}>{orderNumber}</Link> for{' '}
            {day(promisedAt, new Date().toISOString(), clock)}, {clockTime(promisedAt, clock)}.
          </p>
        ))}
        <MoveForm item={item} places={places.filter(({ value }) => value !== content.locationId)} />
        {changes.isError ? <ProblemNotice problem={problemText(changes.error)} /> : null}
        <ol className="record-history">
          {(changes.data?.changes ?? []).map((change) => (
            <li key={`${change.at} ${change.kind} ${change.quantity} ${change.orderId ?? ''}`}>
              <Moved change={change} clock={clock} />
            </li>
          ))}
        </ol>
      </div>
    </Section>
  )
}

const owedWords = ({ facts, content }: StockItem): string =>
  content.coreDepositCents === null ? '' : `, ${money(facts.coresOwed * content.coreDepositCents)} of deposit`

function MoveForm({ item, places }: { item: StockItem; places: readonly RowOption[] }) {
  const client = useQueryClient()
  const [values, setValues] = useState<RowValues>({ move: 'received', cores: '0' })
  const [tried, setTried] = useState(false)
  const [key, setKey] = useState(() => crypto.randomUUID())
  const rows = moveRows(values, places, item.facts.coresOwed)
  const faults = recordFaultsOf(rows, values)
  const saving = useMutation({
    mutationFn: () =>
      call(changeStock, {
        params: { id: item.id },
        body: changeOf(values, item.facts.onHand),
        idempotencyKey: key,
      }),
    onSuccess: async () => {
      setValues({ move: values.move ?? 'received', cores: '0' })
      setTried(false)
      setKey(crypto.randomUUID())
    },
    onSettled: () =>
      Promise.all(
        [['stock-items'], ['stock-changes', item.id], ['transfers'], ['stock']].map((queryKey) =>
          client.invalidateQueries({ queryKey }),
        ),
      ),
  })
  return (
    <form
      className="record-form"
      noValidate
      aria-label="Move stock"
      onSubmit={(event) => {
        event.preventDefault()
        setTried(true)
        if (Object.keys(faults).length === 0 && !saving.isPending) saving.mutate()
      }}
    >
      {rows.map((row) => (
        <RowField
          key={row.key}
          row={row}
          value={values[row.key] ?? ''}
          fault={tried ? faults[row.key] : undefined}
          onChange={(value) => {
            setValues({ ...values, [row.key]: value })
            setKey(crypto.randomUUID())
          }}
        />
      ))}
      {saving.isError ? <ProblemNotice problem={problemText(saving.error)} /> : null}
      <div className="row">
        <Button type="submit" busy={saving.isPending}>
          Record it
        </Button>
      </div>
      <StatusLine>{saving.isSuccess && !tried ? 'Recorded.' : null}</StatusLine>
    </form>
  )
}

function Moved({ change, clock }: { change: StockChange; clock: Clock }) {
  const { at, kind, quantity, cores, lot, words, by, orderId, orderNumber } = change
  const signed = quantity > 0 ? `+${quantity}` : String(quantity).replace('-', '−')
  return (
    <p>
      <strong>{signed}</strong> {moves[kind]} {day(at, new Date().toISOString(), clock)},{' '}
      {clockTime(at, clock)}
      {by === null ? '' : `, ${by}`}
      {lot === null ? '' : ` · lot ${lot}`}
      {cores === 0 ? '' : ` · ${Math.abs(cores)} old parts ${cores > 0 ? 'owed' : 'given back'}`}
      {words === null ? '' : ` · ${words}`}
      {orderId === null ? null : (
        <>
          {' · '}
          <Link to={deskOrderPath(orderId)}>{orderNumber}</Link>
        </>
      )}
    </p>
  )
}
