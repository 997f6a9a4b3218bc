import type { SheetContent } from '@bayledger/contract/sheets'
import type { Prisma } from '@bayledger/db/generated/client'
import { sheetFigureDigest } from '@bayledger/ledger/sheet-agreement'
import {
  type FigureSource,
  SafetyFigure,
  SheetFigure,
  type SpecificationSheet,
} from '@bayledger/reckoning/sheet'
import { AppError } from '../../../core/app-error.ts'
import { hasProvenFigure } from '../../staff/service.ts'

type Sources = SpecificationSheet['sources']
type Saving = { readonly shopId: string; readonly staffId: string; readonly at: Date }

/**
 * Who entered and who verified each figure of a sheet that is being saved. A figure that is as in the version before
 * keeps both; any other was entered by who saves it, and verified only by a second person whose PIN was typed for it.
 */
export const figureSources = async (
  tx: Prisma.TransactionClient,
  saving: Saving,
  content: SheetContent,
  before: SpecificationSheet | null,
): Promise<Sources> => {
  const sources = new Map<SheetFigure, FigureSource>()
  for (const figure of SheetFigure.options) {
    const source = await sourceOf(tx, saving, content, before, figure)
    if (source !== null) sources.set(figure, source)
  }
  return {
    placard: sources.get('placard') ?? null,
    studTorque: sources.get('studTorque') ?? null,
    frequency: sources.get('frequency') ?? null,
    ...Object.fromEntries([...sources].filter(([figure]) => !isSafetyFigure(figure))),
  }
}

const isSafetyFigure = (figure: SheetFigure): boolean => SafetyFigure.options.some((one) => one === figure)

const sourceOf = async (
  tx: Prisma.TransactionClient,
  saving: Saving,
  content: SheetContent,
  before: SpecificationSheet | null,
  figure: SheetFigure,
): Promise<FigureSource | null> => {
  const readFrom = content.sources[figure] ?? null
  const verified = content.verified[figure]
  if (readFrom === null) {
    if (verified !== undefined) throw notAgreed()
    return null
  }
  const kept =
    before && sheetFigureDigest(before, figure) === sheetFigureDigest(content, figure)
      ? (before.sources[figure] ?? null)
      : null
  const { enteredBy, verifiedBy } = kept ?? { enteredBy: saving.staffId, verifiedBy: null }
  if (verified === undefined) return { ...readFrom, enteredBy, verifiedBy }
  const { staffId, token } = verified
  const digest = sheetFigureDigest(content, figure) ?? ''
  // What somebody remembers has no source at which a second person could read it.
  const isProven =
    staffId !== enteredBy &&
    readFrom.kind !== 'memory' &&
    (await hasProvenFigure(tx, saving.shopId, { token, staffId, digest, now: saving.at }))
  if (!isProven) throw notAgreed()
  return { ...readFrom, enteredBy, verifiedBy: staffId }
}

const notAgreed = () => new AppError({ code: 'SECOND_PERSON_REFUSED', why: 'figure-not-agreed' })
