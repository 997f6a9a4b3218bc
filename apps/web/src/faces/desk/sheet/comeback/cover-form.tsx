import { coverRoles } from '@bayledger/ledger/role'
import type { PricedBundle } from '@bayledger/reckoning/estimate'
import { type CoverDecision, isFree, listCentsOf } from '@bayledger/reckoning/money/cover-bundles'
import { english } from '@bayledger/wording/en/english'
import { lineWords } from '@bayledger/wording/estimate-lines'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { sessionQuery } from '../../../../features/people/queries.ts'
import { money } from '../../../../lib/format.ts'
import { Button } from '../../../../ui/button.tsx'
import { SelectField } from '../../../../ui/select-field.tsx'
import { TextField } from '../../../../ui/text-field.tsx'

type CoverFormProps = {
  bundles: readonly PricedBundle[]
  given: readonly CoverDecision[]
  onChange: (given: readonly CoverDecision[]) => void
}

/** A decision against the warranty terms on one line, with the reason that the customer reads. */
export function CoverForm({ bundles, given, onChange }: CoverFormProps) {
  const [at, setAt] = useState<string | null>(null)
  const [why, setWhy] = useState('')
  const session = useQuery(sessionQuery)
  const mayDecide = session.data?.staff.roles.some((role) => coverRoles.includes(role)) ?? true
  const lines = bundles.flatMap((bundle) =>
    bundle.money.lines.flatMap((line) => {
      const cover = bundle.covers?.find(({ lineKey }) => lineKey === line.lineKey)
      return cover ? [{ bundle, line, cover, value: `${bundle.bundleKey}/${line.lineKey}` }] : []
    }),
  )
  const undecided = lines.filter(({ cover }) => cover.judged.is === 'open' && cover.decided === null)
  const chosen = lines.find(({ value }) => value === at)
  const isOpen = chosen !== undefined && undecided.includes(chosen)
  const decide = (decided: CoverDecision['decided']) => {
    if (chosen === undefined) return
    const { bundleKey } = chosen.bundle
    const { lineKey } = chosen.line
    const others = given.filter((one) => one.bundleKey !== bundleKey || one.lineKey !== lineKey)
    onChange([...others, { bundleKey, lineKey, decided, why: why.trim() }])
    setAt(null)
    setWhy('')
  }
  const whyNot = why.trim() === '' ? 'Enter the reason.' : undefined
  if (lines.length === 0) return null
  return (
    <div className="stack">
      {undecided.length === 0 ? null : (
        <p>
          Nobody read the odometer, so the terms leave open:{' '}
          {undecided.map(({ line }) => lineWords(english.estimateLines, line)).join('; ')}. Read it, or decide
          below.
        </p>
      )}
      {mayDecide ? (
        <SelectField
          label="Decide against the warranty terms"
          hint="The customer reads the reason."
          options={lines.map(({ line, cover, value }) => ({
            value,
            label: `${lineWords(english.estimateLines, line)} · ${money(listCentsOf(line))} · ${isFree(cover) ? 'no charge' : 'charged'}`,
          }))}
          value={at}
          onChange={setAt}
        />
      ) : null}
      {chosen === undefined ? null : (
        <>
          <TextField label="Why, as the customer reads it" maxLength={200} value={why} onChange={setWhy} />
          <div className="row">
            {isOpen || !isFree(chosen.cover) ? (
              <Button whyNot={whyNot} onClick={() => decide('covered')}>
                No charge
              </Button>
            ) : null}
            {isOpen || isFree(chosen.cover) ? (
              <Button whyNot={whyNot} onClick={() => decide('charged')}>
                Charge it
              </Button>
            ) : null}
          </div>
        </>
      )}
      {given.length === 0 ? null : (
        <Button onClick={() => onChange([])}>Leave every line as the terms have it</Button>
      )}
    </div>
  )
}
