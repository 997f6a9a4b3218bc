import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { sheetsQuery } from '../../../features/settings/queries.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import type { OrderPart } from './order-part.ts'

/** An order whose specification sheet was withdrawn gets another one here. */
export function ChooseSheet({ order }: OrderPart) {
  const [sheetId, setSheetId] = useState(order.vehicle.sheetId)
  const sheets = useQuery(sheetsQuery)
  const write = useWriteEntries(order.orderId)
  const { state } = order
  if (state.sheet !== null || state.reports.length > 0 || state.ended !== null) return null
  const found = sheets.data?.sheets ?? []
  const sheet = found.find((one) => one.sheetId === sheetId)
  return (
    <Section title="Specification sheet" id="choose-sheet">
      <div className="stack">
        <SelectField
          label="Specification sheet"
          hint="The shop’s own record of this vehicle type’s figures"
          options={found.map((one) => ({ value: one.sheetId, label: one.name }))}
          value={sheetId}
          onChange={setSheetId}
        />
        {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
        <Button
          look="main"
          busy={write.isPending}
          whyNot={sheet === undefined ? 'Choose the specification sheet.' : undefined}
          onClick={() => {
            if (sheet !== undefined)
              write.mutate({ entries: [draftEntry(order.orderId, 'sheet.chosen', { sheet })] })
          }}
        >
          Use this sheet
        </Button>
      </div>
    </Section>
  )
}
