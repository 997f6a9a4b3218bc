import { SecondPersonToken } from '@bayledger/ledger/second-person'
import { PrintedPressure } from '@bayledger/reckoning/quantity'
import {
  FigureSource,
  isMissing,
  SafetyFigure,
  SheetFigure,
  SheetRelearn,
  SheetSensor,
  SheetStuds,
  SheetTire,
  SpecificationSheet,
} from '@bayledger/reckoning/sheet'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { isAsTyped } from '@bayledger/reckoning/units/printed-pressure'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant, line } from './identity.ts'
import { Sure } from './record.ts'

/** Where a person enters a sheet its tire sizes have to be readable; sheets that were stored before stay as they are. */
const readableSizes = z.superRefine<Pick<SpecificationSheet, 'tire'>>(({ tire }, { addIssue }) => {
  if (tire === 'missing') return
  for (const axle of ['front', 'rear', 'spare'] as const) {
    const read = tire[axle] === null ? null : readTireSize(tire[axle].size)
    if (read?.ok === false)
      addIssue({ code: 'custom', path: ['tire', axle, 'size'], message: `${read.allowed}. ${read.do}` })
  }
})

/** Where a label prints no psi, the psi figure is what its own unit comes to. */
const labelAsTyped = z.superRefine<Pick<SpecificationSheet, 'placard'>>(({ placard }, { addIssue }) => {
  if (placard === 'missing') return
  for (const axle of ['front', 'rear', 'spare'] as const)
    if (placard[axle] !== null && !isAsTyped(placard[axle]))
      addIssue({
        code: 'custom',
        path: ['placard', axle, 'psi'],
        message: 'what the figure of the label comes to in psi',
      })
})

/** A safety figure has a source where it is there; none has one where it is missing. */
const sourcedWhereKnown = z.superRefine<
  Pick<SpecificationSheet, 'placard' | 'tire' | 'studs' | 'sensor' | 'relearn' | 'system' | 'liftNotes'> & {
    readonly sources: { readonly [Figure in SheetFigure]?: unknown }
  }
>((sheet, { addIssue }) => {
  const { placard, tire, studs, sensor, relearn, sources } = sheet
  const isThere = {
    placard: placard !== 'missing',
    studTorque: studs !== 'missing',
    frequency: sensor !== 'missing' && sensor !== null,
  }
  for (const figure of SafetyFigure.options)
    if (isThere[figure] !== (sources[figure] !== null))
      addIssue({
        code: 'custom',
        path: ['sources', figure],
        message: isThere[figure] ? 'the source of the figure' : 'no source where the figure is missing',
      })
  for (const figure of ['relearn', 'system', 'lifting'] as const)
    if (
      (sources[figure] ?? null) !== null &&
      (isMissing(sheet, figure) || (figure === 'relearn' && relearn === null))
    )
      addIssue({
        code: 'custom',
        path: ['sources', figure],
        message: 'no source where the figure is missing',
      })
  if ((placard === 'missing') !== (tire === 'missing'))
    addIssue({ code: 'custom', path: ['tire'], message: 'the label as a whole: its pressures and its tires' })
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
    sources: z.strictObject({
      placard: z.nullable(ReadFrom),
      studTorque: z.nullable(ReadFrom),
      frequency: z.nullable(ReadFrom),
      relearn: z.optional(z.nullable(ReadFrom)),
      system: z.optional(z.nullable(ReadFrom)),
      lifting: z.optional(z.nullable(ReadFrom)),
    }),
    verified: z.partialRecord(SheetFigure, z.strictObject({ staffId: Id, token: SecondPersonToken })),
    sure: Sure,
  })
  .check(readableSizes, sourcedWhereKnown, labelAsTyped)
export type SheetContent = z.infer<typeof SheetContent>

/** `createdBy`: the id of who wrote this version; `null`: the program. */
export const StoredSheet = z.strictObject({
  sheet: SpecificationSheet,
  createdAt: Instant,
  createdBy: z.nullable(Id),
})
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
  problems: ['SECOND_PERSON_REFUSED', 'VALUE_DOUBTFUL'],
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
  problems: ['SHEET_NOT_FOUND', 'SECOND_PERSON_REFUSED', 'VALUE_DOUBTFUL'],
})

export const createBlankSheet = endpoint({
  operationId: 'createBlankSheet',
  summary:
    'Begin a sheet for a kind of vehicle of which nothing is known yet; its figures are entered in the bay.',
  method: 'POST',
  path: '/api/sheets/blank',
  access: { who: 'desk' },
  once: true,
  body: z.strictObject({ name: line(200) }),
  replies: { 201: StoredSheet },
  problems: [],
})

const readFrom = { kind: FigureSource.shape.kind, reference: line(200) }
const printed = PrintedPressure.check(
  z.refine(isAsTyped, { path: ['psi'], error: 'what the figure of the label comes to in psi' }),
)

/** One figure of a sheet as somebody reads it at the vehicle or in a book, with where they read it. */
export const EnteredFigure = z.discriminatedUnion('figure', [
  z.strictObject({
    figure: z.literal('placard'),
    placard: z.strictObject({ front: printed, rear: printed, spare: z.nullable(printed) }),
    tire: z.strictObject({ front: SheetTire, rear: SheetTire, spare: z.nullable(SheetTire) }),
    spare: z.enum(['none', 'temporary', 'full-size']),
    ...readFrom,
  }),
  z.strictObject({ figure: z.literal('studTorque'), studs: SheetStuds, ...readFrom }),
  z.strictObject({ figure: z.literal('frequency'), sensor: SheetSensor, ...readFrom }),
  /** The vehicle has no sensors in its wheels: it watches them another way, or not at all. */
  z.strictObject({ figure: z.literal('no-sensors'), system: z.enum(['indirect', 'none']) }),
  z.strictObject({ figure: z.literal('relearn'), relearn: SheetRelearn, ...readFrom }),
  z.strictObject({
    figure: z.literal('system'),
    ...z.pick(SpecificationSheet, {
      pressureDisplay: true,
      locatesWheels: true,
      spareMonitored: true,
      warnAtPsi: true,
    }).shape,
    system: z.enum(['direct', 'indirect', 'none']),
    ...readFrom,
  }),
  z.strictObject({ figure: z.literal('lifting'), liftNotes: line(500), ...readFrom }),
])
export type EnteredFigure = z.infer<typeof EnteredFigure>

export const enterFigure = endpoint({
  operationId: 'enterFigure',
  summary:
    'Enter a figure that a sheet misses, or correct one that nobody has verified yet. It is verified by nobody until a second person does.',
  method: 'POST',
  path: '/api/sheets/:sheetId/figures',
  access: { who: 'staff' },
  once: true,
  ifMatch: true,
  params: z.strictObject({ sheetId: Id }),
  body: z.strictObject({ entered: EnteredFigure, sure: Sure }),
  replies: { 201: StoredSheet },
  problems: ['SHEET_NOT_FOUND', 'VALUE_DOUBTFUL', 'FIGURE_VERIFIED'],
})

export const verifyFigure = endpoint({
  operationId: 'verifyFigure',
  summary:
    'A second person verifies one figure of a sheet at its source, with the token that their PIN earned for it; whoever entered it cannot.',
  method: 'POST',
  path: '/api/sheets/:sheetId/verified-figures',
  access: { who: 'staff' },
  once: true,
  ifMatch: true,
  params: z.strictObject({ sheetId: Id }),
  body: z.strictObject({ figure: SheetFigure, staffId: Id, token: SecondPersonToken }),
  replies: { 201: StoredSheet },
  problems: ['SHEET_NOT_FOUND', 'SECOND_PERSON_REFUSED'],
})

/** An order that used a sheet, newest first, with whom to tell if a figure was wrong. */
export const SheetOrder = z.strictObject({
  orderId: Id,
  number: z.string(),
  vehicle: z.string(),
  customer: z.string(),
  phone: z.nullable(z.string()),
  version: z.int(),
  openedAt: Instant,
})
export type SheetOrder = z.infer<typeof SheetOrder>

export const listSheetOrders = endpoint({
  operationId: 'listSheetOrders',
  summary: 'The orders of vehicles of this kind, with the version of the sheet that each used last.',
  method: 'GET',
  path: '/api/sheets/:sheetId/orders',
  access: { who: 'desk', roles: ['lead', 'manager', 'owner'] },
  params: z.strictObject({ sheetId: Id }),
  replies: { 200: z.strictObject({ orders: z.array(SheetOrder) }) },
  problems: ['SHEET_NOT_FOUND'],
})
