import * as z from 'zod/mini'
import { PrintedPressure, Temperature, Torque } from './quantity.ts'
import { sequenceDoubt } from './torque/sequence-rule.ts'
import { hasStarSequence } from './torque/star-sequence.ts'
import { sheetWords } from './words/typed-text.ts'

const shortText = z.string().check(z.minLength(1), z.maxLength(200))

/** Where a figure was read, who entered it and who, other than that person, verified it. */
export const FigureSource = z.strictObject({
  kind: z.enum(['placard-photo', 'maker-manual', 'sensor-maker-sheet', 'own-measurement', 'memory']),
  reference: shortText,
  enteredBy: shortText,
  verifiedBy: z.nullable(shortText),
})
export type FigureSource = z.infer<typeof FigureSource>

/** Figures that can hurt someone: unverified, each stays closed until a second person confirms it. */
export const SafetyFigure = z.enum(['placard', 'studTorque', 'frequency'])
export type SafetyFigure = z.infer<typeof SafetyFigure>

/**
 * Every figure of a sheet that has a source of its own. `system`: how the vehicle watches its tires and where it warns;
 * `lifting`: what to know of lifting it.
 */
export const SheetFigure = z.enum([...SafetyFigure.options, 'relearn', 'system', 'lifting'])
export type SheetFigure = z.infer<typeof SheetFigure>

export const LoadClass = z.enum(['SL', 'XL', 'HL', 'LT-C', 'LT-D', 'LT-E', 'LT-F', 'C'])
export type LoadClass = z.infer<typeof LoadClass>

/** A tire as the placard names it; pressures in psi, cold. */
export const SheetTire = z.strictObject({
  size: shortText,
  loadClass: LoadClass,
  sidewallMaximumPsi: z.number().check(z.gte(20), z.lte(130)),
})
export type SheetTire = z.infer<typeof SheetTire>

/** In place of a figure that the shop does not have yet. It reads as no number, so that nothing can compute with it. */
const missing = z.literal('missing')

const perAxle = <T extends z.core.$ZodType>(schema: T) =>
  z.strictObject({ front: schema, rear: schema, spare: z.nullable(schema) })

/** What a vehicle with a sensor in each wheel requires of a sensor. Torques come from the sensor maker's sheet. */
export const SheetSensor = z.strictObject({
  frequencyMHz: z.number().check(z.gte(100), z.lte(3_000)),
  protocol: shortText,
  stem: z.enum(['snap-in', 'clamp-in']),
  mounting: z.enum(['valve', 'band']),
  wokenBy: z.enum(['low-frequency-field', 'pressure-drop', 'magnet']),
  stemNutTorque: z.nullable(Torque),
  stemScrewTorque: z.nullable(Torque),
  coreTorque: Torque,
})
export type SheetSensor = z.infer<typeof SheetSensor>

/** How the vehicle is made to learn its sensors or, without sensors, its tires. */
export const SheetRelearn = z.strictObject({
  method: z.enum(['automatic', 'stationary', 'connector', 'reset']),
  entry: shortText,
  confirmation: shortText,
  exit: shortText,
  timeLimitMinutes: z.nullable(z.number()),
  parkMinutes: z.nullable(z.number()),
  driveMinutes: z.nullable(z.number()),
  driveSpeedMph: z.nullable(z.number()),
  knownTrap: z.nullable(shortText),
})
export type SheetRelearn = z.infer<typeof SheetRelearn>

/** A wheel's fasteners. The maker's own sequence goes before the star; without one, there must be a star. */
export const SheetStuds = z
  .strictObject({
    count: z.int().check(z.gte(3), z.lte(10)),
    thread: shortText,
    fastener: z.enum(['nut', 'bolt']),
    seat: z.enum(['cone', 'ball', 'flat']),
    torque: Torque,
    handTurns: z.number(),
    makersSequence: z.nullable(z.array(z.int())),
    lockingFastener: z.boolean(),
    retorqueMiles: z.strictObject({ from: z.number(), to: z.number() }),
  })
  .check(
    z.refine(
      ({ count, makersSequence }) => makersSequence === null || sequenceDoubt(makersSequence, count) === null,
      {
        path: ['makersSequence'],
        error: sheetWords.makersSequence,
      },
    ),
    z.refine(({ count, makersSequence }) => makersSequence !== null || hasStarSequence(count), {
      path: ['makersSequence'],
      error: sheetWords.noStar,
    }),
  )
export type SheetStuds = z.infer<typeof SheetStuds>

/**
 * The shop's own record of one vehicle type's figures. The vehicle maker's figure governs; the sheet only
 * writes down where it was read and who verified it.
 */
export const SpecificationSheet = z.strictObject({
  sheetId: shortText,
  version: z.int().check(z.positive()),
  name: shortText,
  system: z.enum(['direct', 'indirect', 'none', 'unknown']),
  pressureDisplay: z.boolean(),
  locatesWheels: z.boolean(),
  spare: z.enum(['none', 'temporary', 'full-size', 'unknown']),
  spareMonitored: z.boolean(),
  staggered: z.boolean(),
  placard: z.union([perAxle(PrintedPressure), missing]),
  warnAtPsi: z.nullable(perAxle(z.nullable(z.number()))),
  tire: z.union([perAxle(SheetTire), missing]),
  /** `null`: the vehicle has none. */
  sensor: z.union([z.nullable(SheetSensor), missing]),
  studs: z.union([SheetStuds, missing]),
  /** `null`: it needs none. */
  relearn: z.union([z.nullable(SheetRelearn), missing]),
  liftNotes: z.string().check(z.maxLength(500)),
  sources: z.strictObject({
    placard: z.nullable(FigureSource),
    studTorque: z.nullable(FigureSource),
    frequency: z.nullable(FigureSource),
    /** Sheets from before these had a source have none. */
    relearn: z.optional(z.nullable(FigureSource)),
    system: z.optional(z.nullable(FigureSource)),
    lifting: z.optional(z.nullable(FigureSource)),
  }),
})
export type SpecificationSheet = z.infer<typeof SpecificationSheet>

/** Whether a sheet does not have a figure at all. Where a vehicle has no sensors, no frequency is missing. */
export const isMissing = (
  sheet: Pick<SpecificationSheet, Figures | 'system' | 'liftNotes'>,
  figure: SheetFigure,
): boolean => {
  switch (figure) {
    case 'placard':
      return sheet.placard === 'missing'
    case 'studTorque':
      return sheet.studs === 'missing'
    case 'frequency':
      return sheet.sensor === 'missing'
    case 'relearn':
      return sheet.relearn === 'missing'
    case 'system':
      return sheet.system === 'unknown'
    case 'lifting':
      return sheet.liftNotes === ''
  }
}

type ReadFrom = Pick<FigureSource, 'kind' | 'reference'>
type SourcesRead = { readonly [Figure in SafetyFigure]: ReadFrom | null } & {
  readonly [Figure in Exclude<SheetFigure, SafetyFigure>]?: ReadFrom
}

/** Where the figures of a sheet were read, without who entered and who verified them. */
export const sourcesRead = ({
  placard,
  studTorque,
  frequency,
  relearn,
  system,
  lifting,
}: SpecificationSheet['sources']): SourcesRead => ({
  placard: placard && readFrom(placard),
  studTorque: studTorque && readFrom(studTorque),
  frequency: frequency && readFrom(frequency),
  ...(relearn ? { relearn: readFrom(relearn) } : {}),
  ...(system ? { system: readFrom(system) } : {}),
  ...(lifting ? { lifting: readFrom(lifting) } : {}),
})

const readFrom = ({ kind, reference }: ReadFrom): ReadFrom => ({ kind, reference })

/** The figures that a vehicle has: without sensors it has no frequency, and where it needs no learning no procedure. */
export const figuresOf = (sheet: SpecificationSheet): SheetFigure[] =>
  SheetFigure.options.filter(
    (figure) =>
      !(figure === 'frequency' && sheet.sensor === null) &&
      !(figure === 'relearn' && sheet.relearn === null) &&
      !(figure === 'lifting' && sheet.liftNotes === ''),
  )

/**
 * The safety figures of a sheet that no second person has verified yet; one without a source counts as unverified, and
 * so does one that is missing.
 */
export const unverifiedFigures = (sheet: SpecificationSheet): SafetyFigure[] =>
  SafetyFigure.options.filter(
    (figure) =>
      (figure !== 'frequency' || sheet.sensor !== null) &&
      (sheet.sources[figure]?.verifiedBy ?? null) === null,
  )

/**
 * What a figure is worth: a second person verified it at its source; one person entered it, read it off the vehicle's
 * label, or remembered it; or nobody has it.
 */
export const FigureWorth = z.enum(['verified', 'entered', 'label', 'memory', 'missing'])
export type FigureWorth = z.infer<typeof FigureWorth>

/** What a figure of a sheet is worth. A figure whose source nobody named was only entered. */
export const figureWorth = (sheet: SpecificationSheet, figure: SheetFigure): FigureWorth => {
  if (isMissing(sheet, figure)) return 'missing'
  const source = sheet.sources[figure]
  if (source?.verifiedBy != null) return 'verified'
  if (source?.kind === 'placard-photo') return 'label'
  return source?.kind === 'memory' ? 'memory' : 'entered'
}

type MaybeSheet = SpecificationSheet | null | undefined
type Known<Name extends Figures> = Exclude<SpecificationSheet[Name], 'missing'>
const known = <T>(figure: T | 'missing' | undefined): T | null =>
  figure === 'missing' || figure === undefined ? null : figure

/** The label's pressures; `null` where no sheet has them. */
export const placardOf = (sheet: MaybeSheet): Known<'placard'> | null => known(sheet?.placard)

/** The tires that the label names; `null` where no sheet has them. */
export const tiresOf = (sheet: MaybeSheet): Known<'tire'> | null => known(sheet?.tire)

/** What the vehicle requires of a sensor; `null` where it has none, and where nobody knows yet. */
export const sensorOf = (sheet: MaybeSheet): SheetSensor | null => known(sheet?.sensor)

/** The wheels' fasteners; `null` where nobody knows them yet. */
export const studsOf = (sheet: MaybeSheet): SheetStuds | null => known(sheet?.studs)

/** How the vehicle learns; `null` where it needs nothing, and where nobody knows yet. */
export const relearnOf = (sheet: MaybeSheet): SheetRelearn | null => known(sheet?.relearn)

type Figures = 'placard' | 'tire' | 'sensor' | 'studs' | 'relearn'

/** A sheet on which nothing is missing. */
export type CompleteSheet = Omit<SpecificationSheet, Figures | 'sources'> & {
  [Name in Figures]: Known<Name>
} & {
  sources: { placard: FigureSource; studTorque: FigureSource; frequency: FigureSource | null }
}

/** The sheet of a kind of vehicle of which nothing is known yet but its name. */
export const blankSheet = (name: string): Omit<SpecificationSheet, 'sheetId' | 'version'> => ({
  name,
  system: 'unknown',
  pressureDisplay: false,
  locatesWheels: false,
  spare: 'unknown',
  spareMonitored: false,
  staggered: false,
  placard: 'missing',
  warnAtPsi: null,
  tire: 'missing',
  sensor: 'missing',
  studs: 'missing',
  relearn: 'missing',
  liftNotes: '',
  sources: { placard: null, studTorque: null, frequency: null },
})

/** The source of a tire temperature, which decides how far a computed target may be trusted. */
export const TemperatureQuality = z.enum(['measured', 'estimated', 'assumed'])
export type TemperatureQuality = z.infer<typeof TemperatureQuality>

/** Outdoor and tire temperature with the altitude of the place, as a pressure was read or set. */
export const Surroundings = z.strictObject({
  outdoor: Temperature,
  overnightLow: z.nullable(Temperature),
  tires: z.enum(['cold', 'driven', 'indoor-warmed']),
  tire: z.nullable(Temperature),
  altitudeFeet: z.number().check(z.gte(-1_500), z.lte(20_000)),
})
export type Surroundings = z.infer<typeof Surroundings>
