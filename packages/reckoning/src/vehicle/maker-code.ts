/** Who is registered as the vehicle's maker. */
export type MakerCode = { readonly code: string; readonly lowVolume: boolean }

/**
 * The maker's code in a VIN: its first three characters; where the third is a 9 the maker builds few vehicles a year
 * and shares them, so that characters 12 to 14 belong to the code as well.
 *
 * @limits a VIN as `readVin` takes it: 17 characters
 * @source 49 CFR 565.15(a) (read)
 */
export const makerCode = (vin: string): MakerCode => {
  const lowVolume = vin[2] === '9'
  return { code: vin.slice(0, 3) + (lowVolume ? vin.slice(11, 14) : ''), lowVolume }
}
