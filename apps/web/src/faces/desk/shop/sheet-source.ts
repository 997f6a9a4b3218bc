import {
  createSheet,
  createSheetVersion,
  getSheet,
  listSheets,
  type SheetContent,
  type StoredSheet,
} from '@bayledger/contract/sheets'
import { listStaff } from '@bayledger/contract/staff'
import { type SpecificationSheet, sourcesRead } from '@bayledger/reckoning/sheet'
import { call } from '../../../lib/api-client.ts'
import { CallProblem, isCallProblem } from '../../../lib/problem.ts'
import type { Kept, RecordSource } from '../../../lib/record-source.ts'

export type SheetFacts = { readonly sheet: SpecificationSheet }
export type KeptSheet = Kept<SheetContent, SheetFacts>

/** A stored sheet as it is edited: who entered and verified its figures is the server's to keep. */
export const contentOf = ({ sheetId: _id, version: _version, sources, ...figures }: SpecificationSheet) => ({
  ...figures,
  sources: sourcesRead(sources),
  verified: {},
})

const keptOf = (sheet: SpecificationSheet): KeptSheet => ({
  id: sheet.sheetId,
  version: sheet.version,
  content: contentOf(sheet),
  facts: { sheet },
})

/** Sheets as the pattern of an owner's page reads and writes records. */
export const sheetSource: RecordSource<SheetContent, SheetFacts> = {
  list: async (signal) => (await call(listSheets, { signal })).sheets.map(keptOf),
  read: async (sheetId, signal) => {
    const [{ versions }, { staff }] = await Promise.all([
      call(getSheet, { params: { sheetId }, signal }),
      call(listStaff, { signal }),
    ])
    const [newest] = versions
    if (newest === undefined) throw new RangeError('a sheet has a version')
    return {
      record: keptOf(newest.sheet),
      history: versions.map(({ sheet, createdAt, createdBy }) => ({
        version: sheet.version,
        content: contentOf(sheet),
        by: staff.find(({ staffId }) => staffId === createdBy)?.name ?? null,
        at: createdAt,
      })),
    }
  },
  create: async (content, sure, idempotencyKey) =>
    keptOf((await call(createSheet, { idempotencyKey, body: { ...content, sure: [...sure] } })).sheet),
  put: async (sheetId, version, content, sure) => {
    try {
      const body = { ...content, sure: [...sure] }
      // Saving twice is kept apart by the version: the second one meets the first.
      const idempotencyKey = crypto.randomUUID()
      return keptOf(
        (await call(createSheetVersion, { params: { sheetId }, version, idempotencyKey, body })).sheet,
      )
    } catch (thrown) {
      throw isCallProblem(thrown, 'VERSION_STALE') ? withCurrent(thrown) : thrown
    }
  },
}

/** The version that somebody saved meanwhile, as the page compares it. */
const withCurrent = ({ body }: CallProblem): CallProblem =>
  new CallProblem({ ...body, current: keptOf((body.current as StoredSheet).sheet) })
