import { verifyFigure } from '@bayledger/contract/sheets'
import { proveSecondPerson } from '@bayledger/contract/staff'
import { judgeRoles } from '@bayledger/ledger/role'
import { sheetFigureDigest } from '@bayledger/ledger/sheet-agreement'
import type { SheetFigure, SpecificationSheet } from '@bayledger/reckoning/sheet'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { sessionQuery, staffQuery } from '../../../features/people/queries.ts'
import { sheetFigureNames, sheetFigureValue } from '../../../features/sheets/figure-words.ts'
import { call } from '../../../lib/api-client.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { verifyFaults } from './verify-words.ts'

type VerifyProps = { sheet: SpecificationSheet; figure: SheetFigure }

/** Offers to verify a figure, or says why nobody can: it has no source, or it was remembered. */
export function VerifyHere({ sheet, figure }: VerifyProps) {
  const [isOpen, setOpen] = useState(false)
  const source = sheet.sources[figure] ?? null
  if (source === null) return 'nobody yet: it names no source'
  if (source.kind === 'memory') return 'nobody can: no source to read'
  return (
    <>
      nobody yet{' '}
      <Button aria-label={`Verify: ${sheetFigureNames[figure]}`} onClick={() => setOpen(true)}>
        Verify
      </Button>
      {isOpen ? <VerifyDialog sheet={sheet} figure={figure} onClose={() => setOpen(false)} /> : null}
    </>
  )
}

/** Somebody other than who entered the figure reads it at its source and says so with their own PIN. */
function VerifyDialog({ sheet, figure, onClose }: VerifyProps & { onClose: () => void }) {
  const client = useQueryClient()
  const own = useQuery(sessionQuery).data?.staff.staffId ?? null
  const staff = useQuery(staffQuery).data?.staff ?? []
  const source = sheet.sources[figure]
  const people = staff.filter(
    ({ staffId, roles }) => staffId !== source?.enteredBy && roles.some((role) => judgeRoles.includes(role)),
  )
  const [chosen, setChosen] = useState<string | null>(null)
  const [pin, setPin] = useState('')
  const staffId = chosen ?? people.find((person) => person.staffId === own)?.staffId ?? null
  const verifying = useMutation({
    mutationFn: async () => {
      const entryId = crypto.randomUUID()
      const digest = sheetFigureDigest(sheet, figure) ?? ''
      const agreesTo = { orderId: entryId, entryId, kind: 'sheet-figure' as const, digest }
      const { token } = await call(proveSecondPerson, { body: { staffId: staffId ?? '', pin, agreesTo } })
      await call(verifyFigure, {
        params: { sheetId: sheet.sheetId },
        version: sheet.version,
        idempotencyKey: crypto.randomUUID(),
        body: { figure, staffId: staffId ?? '', token },
      })
    },
    onSuccess: async () => {
      await client.invalidateQueries()
      onClose()
    },
    // Somebody saved the sheet meanwhile: what is on it now is shown, and is read again at its source.
    onError: (thrown) => {
      setPin('')
      if (isCallProblem(thrown, 'VERSION_STALE')) void client.invalidateQueries()
    },
  })
  return (
    <Dialog title={`Verify: ${sheetFigureNames[figure]}`} onClose={onClose}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault()
          verifying.mutate()
        }}
      >
        <p>
          {sheet.name}: <strong>{sheetFigureValue(sheet, figure)}</strong>
        </p>
        <p>
          Read it yourself in {source?.reference}. Verify it only if it says the same there. The vehicle
          maker’s figures govern.
        </p>
        <SelectField
          label="Who read it"
          hint="Not whoever entered it."
          options={people.map((person) => ({ value: person.staffId, label: person.name }))}
          value={staffId}
          onChange={setChosen}
        />
        <TextField
          label="Their PIN"
          type="password"
          inputMode="numeric"
          autoComplete="off"
          value={pin}
          onChange={setPin}
        />
        {verifying.isError ? <ProblemNotice problem={problemText(verifying.error)} /> : null}
        <Button
          type="submit"
          look="main"
          busy={verifying.isPending}
          whyNot={
            staffId === null ? verifyFaults.nobody : /^\d{6}$/.test(pin) ? undefined : verifyFaults.noPin
          }
        >
          I read the same there
        </Button>
      </form>
    </Dialog>
  )
}
