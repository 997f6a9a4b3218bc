import type { EnteredFigure, SheetContent, StoredSheet } from '@bayledger/contract/sheets'
import { sheetFigureDigest } from '@bayledger/ledger/sheet-agreement'
import {
  blankSheet,
  type FigureSource,
  figureWorth,
  SheetFigure,
  type SpecificationSheet,
  sourcesRead,
} from '@bayledger/reckoning/sheet'
import type { StaffActor } from '../../../core/actor.ts'
import { AppError } from '../../../core/app-error.ts'
import { askAbout } from '../../../core/refused-fields.ts'
import type { Deps } from '../../../deps.ts'
import { torqueDoubtsOf } from '../policy.ts'
import { changeSheet, createSheet } from '../service.ts'

type Key = { readonly key: string; readonly requestHash: string }
type Version = { readonly sheetId: string; readonly version: number }

/** A sheet with nothing on it but the name of its kind of vehicle. */
export const createBlankSheet = (
  deps: Deps,
  actor: StaffActor,
  key: Key,
  name: string,
): Promise<StoredSheet> => createSheet(deps, actor, key, { ...blankSheet(name), verified: {} })

/**
 * Enters one figure: a missing one, or one that nobody has verified yet.
 * @throws VALUE_DOUBTFUL for a torque that is unlikely for its thread, FIGURE_VERIFIED, SHEET_NOT_FOUND, VERSION_STALE
 */
export const enterFigure = (
  deps: Deps,
  actor: StaffActor,
  key: Key,
  at: Version,
  { entered, sure }: { readonly entered: EnteredFigure; readonly sure?: string[] | undefined },
): Promise<StoredSheet> => {
  if (entered.figure === 'studTorque') askAbout(torqueDoubtsOf(entered.studs), sure)
  return changeSheet(deps, actor, key, at, (before) => {
    const after = withFigure(contentOf(before), entered)
    for (const figure of SheetFigure.options) {
      const isChanged = sheetFigureDigest(before, figure) !== sheetFigureDigest(after, figure)
      if ((isChanged || figure === entered.figure) && figureWorth(before, figure) === 'verified')
        throw new AppError({ code: 'FIGURE_VERIFIED' })
    }
    return after
  })
}

/** A second person verifies a figure as it is on the sheet. @throws SECOND_PERSON_REFUSED, SHEET_NOT_FOUND, VERSION_STALE */
export const verifyFigure = (
  deps: Deps,
  actor: StaffActor,
  key: Key,
  at: Version,
  {
    figure,
    staffId,
    token,
  }: { readonly figure: SheetFigure; readonly staffId: string; readonly token: string },
): Promise<StoredSheet> =>
  changeSheet(deps, actor, key, at, (before) => ({
    ...contentOf(before),
    verified: { [figure]: { staffId, token } },
  }))

/** A stored sheet as it is edited: without who entered and verified, which the server keeps. */
const contentOf = ({
  sheetId: _id,
  version: _version,
  sources,
  ...figures
}: SpecificationSheet): SheetContent => ({
  ...figures,
  sources: sourcesRead(sources),
  verified: {},
})

type ReadFrom = Pick<FigureSource, 'kind' | 'reference'>
const readFrom = ({ kind, reference }: ReadFrom): ReadFrom => ({ kind, reference })

/** The sheet with what was read. How the vehicle watches its tires and whether it has sensors are said alike. */
const withFigure = (content: SheetContent, entered: EnteredFigure): SheetContent => {
  const { sources } = content
  switch (entered.figure) {
    case 'placard': {
      const { placard, tire, spare } = entered
      return { ...content, placard, tire, spare, sources: { ...sources, placard: readFrom(entered) } }
    }
    case 'studTorque':
      return { ...content, studs: entered.studs, sources: { ...sources, studTorque: readFrom(entered) } }
    case 'frequency': {
      const after = watching(content, 'direct')
      return {
        ...after,
        sensor: entered.sensor,
        sources: { ...after.sources, frequency: readFrom(entered) },
      }
    }
    case 'no-sensors':
      return watching(content, entered.system)
    case 'relearn':
      return { ...content, relearn: entered.relearn, sources: { ...sources, relearn: readFrom(entered) } }
    case 'system': {
      const { figure: _figure, kind, reference, system, ...how } = entered
      const after = watching(content, system)
      return { ...after, ...how, sources: { ...after.sources, system: { kind, reference } } }
    }
    case 'lifting':
      return { ...content, liftNotes: entered.liftNotes, sources: { ...sources, lifting: readFrom(entered) } }
  }
}

/** A vehicle that watches its tires by sensors has some; any other has none. A source that said otherwise goes. */
const watching = (content: SheetContent, system: 'direct' | 'indirect' | 'none'): SheetContent => {
  const { system: source, ...others } = content.sources
  const sources = system === content.system && source ? { ...others, system: source } : others
  if (system === 'direct') return { ...content, system, sensor: content.sensor ?? 'missing', sources }
  return { ...content, system, sensor: null, sources: { ...sources, frequency: null } }
}
