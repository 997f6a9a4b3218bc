declare const measuredIn: unique symbol

/**
 * A number that is a quantity in one unit. The unit is in the type only: a number in kPa does not compile
 * where one in kelvin is expected, and a plain number has to be given a unit first.
 */
export type Measured<Unit extends string> = number & { readonly [measuredIn]: Unit }

/** Gauge pressure: over the open air, as a shop gauge shows it. Never to be put into the gas law by itself. */
export type GaugeKilopascals = Measured<'kPa gauge'>
/** Absolute pressure, as that of the open air. */
export type AbsoluteKilopascals = Measured<'kPa absolute'>
/** Between two pressures of one kind: the same whether both are gauge or both absolute. */
export type KilopascalsApart = Measured<'kPa apart'>
export type Kelvin = Measured<'K'>
export type NewtonMeters = Measured<'N·m'>
export type Meters = Measured<'m'>
export type Millimeters = Measured<'mm'>
export type SquareMillimeters = Measured<'mm²'>
export type Newtons = Measured<'N'>
/** Stress: newtons a square millimeter. */
export type Megapascals = Measured<'MPa'>
export type KilometersPerHour = Measured<'km/h'>
export type Kilograms = Measured<'kg'>

export const gaugeKilopascals = (value: number): GaugeKilopascals => value as GaugeKilopascals
export const absoluteKilopascals = (value: number): AbsoluteKilopascals => value as AbsoluteKilopascals
export const kilopascalsApart = (value: number): KilopascalsApart => value as KilopascalsApart
export const kelvins = (value: number): Kelvin => value as Kelvin
export const newtonMeters = (value: number): NewtonMeters => value as NewtonMeters
export const meters = (value: number): Meters => value as Meters
export const millimeters = (value: number): Millimeters => value as Millimeters
export const squareMillimeters = (value: number): SquareMillimeters => value as SquareMillimeters
export const newtons = (value: number): Newtons => value as Newtons
export const megapascals = (value: number): Megapascals => value as Megapascals
export const kilometersPerHour = (value: number): KilometersPerHour => value as KilometersPerHour
export const kilograms = (value: number): Kilograms => value as Kilograms
