import { SecondPersonToken } from '@bayledger/ledger/second-person'
import { FigureSource, SafetyFigure, SpecificationSheet } from '@bayledger/reckoning/sheet'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant } from './identity.ts'

/** Where a person enters a sheet its tire sizes have to be readable; sheets that were stored before stay as they are. */
const readableSizes = z.superRefine<Pick<SpecificationSheet, 'tire'>>(({ tire }, { addIssue }) => {
  for (const axle of ['front', 'rear', 'spare'] as const) {
    const read = tire[axle] === null ? null : readTireSize(tire[axle].size)
    if (read?.ok === false)
      addIssue({ code: 'custom', path: ['tire', axle, 'size'], message: `${read.allowed}. ${read.do}` })
  }
})

/** Where a figure was read. Who entered it is who is signed in; who verified it is proven by `verified`. */
const ReadFrom = z.pick(FigureSource, { kind: true, reference: true })

/**
 * A sheet as it is edited: the server gives its id, its version and who entered each figure. `verified`: by figure, the
 * second person and the token that their PIN earned for it (`sheetFigureDigest` in the ledger). A figure that is as in
 * the version before keeps its people.
 */
export const SheetContent = z
  .extend(z.omit(SpecificationSheet, { sheetId: true, version: true, sources: true }), {
    sources: z.strictObject({ placard: ReadFrom, studTorque: ReadFrom, frequency: z.nullable(ReadFrom) }),
    verified: z.partialRecord(SafetyFigure, z.strictObject({ staffId: Id, token: SecondPersonToken })),
  })
  .check(readableSizes)
export type SheetContent = z.infer<typeof SheetContent>

export const StoredSheet = z.strictObject({ sheet: SpecificationSheet, createdAt: Instant })
export type StoredSheet = z.infer<typeof StoredSheet>

export const listSheets = endpoint({
  operationId: 'listSheets',
  summary: 'The newest version of every specification sheet.',
  method: 'GET',
  path: '/api/sheets',
  access: { who: 'staff' },
  replies: { 200: z.strictObject({ sheets: z.array(SpecificationSheet) }) },
  problems: [],
})

export const createSheet = endpoint({
  operationId: 'createSheet',
  summary: 'Add a sheet for a vehicle type.',
  method: 'POST',
  path: '/api/sheets',
  access: { who: 'desk', roles: ['lead', 'manager', 'owner'] },
  once: true,
  body: SheetContent,
  replies: { 201: StoredSheet },
  problems: ['SECOND_PERSON_REFUSED'],
})

export const getSheet = endpoint({
  operationId: 'getSheet',
  summary: 'One sheet with all its versions, newest first.',
  method: 'GET',
  path: '/api/sheets/:sheetId',
  access: { who: 'staff' },
  params: z.strictObject({ sheetId: Id }),
  replies: { 200: z.strictObject({ versions: z.array(StoredSheet) }) },
  problems: ['SHEET_NOT_FOUND'],
})

export const createSheetVersion = endpoint({
  operationId: 'createSheetVersion',
  summary: 'Write a new version of a sheet; orders keep the version that they used.',
  method: 'POST',
  path: '/api/sheets/:sheetId/versions',
  access: { who: 'desk', roles: ['lead', 'manager', 'owner'] },
  once: true,
  ifMatch: true,
  params: z.strictObject({ sheetId: Id }),
  body: SheetContent,
  replies: { 201: StoredSheet },
  problems: ['SHEET_NOT_FOUND', 'SECOND_PERSON_REFUSED'],
})
