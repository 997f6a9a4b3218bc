import * as z from 'zod/mini'
import { PrintedPressure, Temperature, Torque } from './quantity.ts'
import { sequenceDoubt } from './torque/sequence-rule.ts'
import { hasStarSequence } from './torque/star-sequence.ts'

const shortText = z.string().check(z.minLength(1), z.maxLength(200))

/** Where a figure was read, who entered it and who, other than that person, verified it. */
export const FigureSource = z.strictObject({
  kind: z.enum(['placard-photo', 'maker-manual', 'sensor-maker-sheet', 'own-measurement']),
  reference: shortText,
  enteredBy: shortText,
  verifiedBy: z.nullable(shortText),
})
export type FigureSource = z.infer<typeof FigureSource>

/** Figures that can hurt someone: unverified, each stays closed until a second person confirms it. */
export const SafetyFigure = z.enum(['placard', 'studTorque', 'frequency'])
export type SafetyFigure = z.infer<typeof SafetyFigure>

export const LoadClass = z.enum(['SL', 'XL', 'HL', 'LT-C', 'LT-D', 'LT-E', 'LT-F', 'C'])
export type LoadClass = z.infer<typeof LoadClass>

/** A tire as the placard names it; pressures in psi, cold. */
export const SheetTire = z.strictObject({
  size: shortText,
  loadClass: LoadClass,
  sidewallMaximumPsi: z.number().check(z.gte(20), z.lte(130)),
})
export type SheetTire = z.infer<typeof SheetTire>

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
        error: 'the order of tightening names each fastener once and goes across the wheel at each step',
      },
    ),
    z.refine(({ count, makersSequence }) => makersSequence !== null || hasStarSequence(count), {
      path: ['makersSequence'],
      error: "no source gives an order for this many fasteners: enter the vehicle maker's own",
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
  spare: z.enum(['none', 'temporary', 'full-size']),
  spareMonitored: z.boolean(),
  staggered: z.boolean(),
  placard: perAxle(PrintedPressure),
  warnAtPsi: z.nullable(perAxle(z.nullable(z.number()))),
  tire: perAxle(SheetTire),
  sensor: z.nullable(SheetSensor),
  studs: SheetStuds,
  relearn: z.nullable(SheetRelearn),
  liftNotes: z.string().check(z.maxLength(500)),
  sources: z.strictObject({
    placard: FigureSource,
    studTorque: FigureSource,
    frequency: z.nullable(FigureSource),
  }),
})
export type SpecificationSheet = z.infer<typeof SpecificationSheet>

/** The safety figures of a sheet that no second person has verified yet; one without a source counts as unverified. */
export const unverifiedFigures = (sheet: SpecificationSheet): SafetyFigure[] =>
  SafetyFigure.options.filter(
    (figure) =>
      (figure !== 'frequency' || sheet.sensor !== null) &&
      (sheet.sources[figure]?.verifiedBy ?? null) === null,
  )

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
