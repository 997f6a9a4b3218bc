import { verifyFigure } from '@bayledger/contract/sheets'
import { proveSecondPerson } from '@bayledger/contract/staff'
import { judgeRoles } from '@bayledger/ledger/role'
import { sheetFigureDigest } from '@bayledger/ledger/sheet-agreement'
import type { SheetFigure, SpecificationSheet } from '@bayledger/reckoning/sheet'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { newId } from '../../../features/ledger/draft-entry.ts'
import { staffQuery } from '../../../features/people/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { SecondPersonPin } from '../record/second-person-pin.tsx'
import { newestOf, putInOrder } from './enter-figure.tsx'

type VerifyFigureProps = {
  orderId: string
  sheet: SpecificationSheet
  figure: SheetFigure
  title: string
  onBack: () => void
  onDone: () => void
}

/**
 * Somebody other than who entered a figure reads it at its source and verifies it on the sheet with their PIN: from then on
 * it serves every vehicle of this kind.
 */
export function VerifyFigure({ orderId, sheet, figure, title, onBack, onDone }: VerifyFigureProps) {
  const [busy, setBusy] = useState(false)
  const [problem, setProblem] = useState<unknown>(null)
  const enteredBy = sheet.sources[figure]?.enteredBy ?? null
  const staff = useQuery(staffQuery).data?.staff ?? []
  const people = staff.filter(
    ({ staffId, roles }) => staffId !== enteredBy && roles.some((role) => judgeRoles.includes(role)),
  )
  const onPin = async (staffId: string, pin: string): Promise<boolean> => {
    setBusy(true)
    setProblem(null)
    try {
      const newest = await newestOf(sheet.sheetId)
      const digest = sheetFigureDigest(sheet, figure) ?? ''
      // Somebody has changed or verified it meanwhile: the order takes what is on the sheet now, which is shown next.
      if (sheetFigureDigest(newest, figure) !== digest || newest.sources[figure]?.verifiedBy != null) {
        await putInOrder(orderId, newest)
        onDone()
        return true
      }
      const own = newId()
      const agreesTo = { orderId: own, entryId: own, kind: 'sheet-figure' as const, digest }
      const { token } = await call(proveSecondPerson, { body: { staffId, pin, agreesTo } })
      const { sheet: verified } = await call(verifyFigure, {
        params: { sheetId: sheet.sheetId },
        version: newest.version,
        idempotencyKey: newId(),
        body: { figure, staffId, token },
      })
      await putInOrder(orderId, verified)
      onDone()
      return true
    } catch (thrown) {
      setProblem(thrown)
      return false
    } finally {
      setBusy(false)
    }
  }
  return (
    <SecondPersonPin
      title={title}
      people={people}
      asks={{
        name: `Read it yourself: ${sheet.sources[figure]?.reference ?? ''}. If it says the same, tap your name.`,
        pin: 'type your 6-digit PIN. You read the same figure there.',
      }}
      onBack={onBack}
      onPin={onPin}
      busy={busy}
      problem={problem}
    />
  )
}
