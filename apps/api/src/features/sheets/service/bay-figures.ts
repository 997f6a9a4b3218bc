import type { EnteredFigure, SheetContent, StoredSheet } from '@bayledger/contract/sheets'
import {
  blankSheet,
  type FigureSource,
  figureWorth,
  type SheetFigure,
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
    const figure = entered.figure === 'no-sensors' ? 'frequency' : entered.figure
    if (figureWorth(before, figure) === 'verified') throw new AppError({ code: 'FIGURE_VERIFIED' })
    return withFigure(contentOf(before), entered)
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

const withFigure = (content: SheetContent, entered: EnteredFigure): SheetContent => {
  switch (entered.figure) {
    case 'placard': {
      const { placard, tire, spare } = entered
      return { ...content, placard, tire, spare, sources: { ...content.sources, placard: readFrom(entered) } }
    }
    case 'studTorque':
      return {
        ...content,
        studs: entered.studs,
        sources: { ...content.sources, studTorque: readFrom(entered) },
      }
    case 'frequency':
      return {
        ...content,
        system: 'direct',
        sensor: entered.sensor,
        sources: { ...content.sources, frequency: readFrom(entered) },
      }
    case 'relearn':
      return {
        ...content,
        relearn: entered.relearn,
        sources: { ...content.sources, relearn: readFrom(entered) },
      }
    case 'no-sensors':
      return {
        ...content,
        system: entered.system,
        sensor: null,
        sources: { ...content.sources, frequency: null },
      }
  }
}
