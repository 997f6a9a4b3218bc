export type VinRegion = {
  readonly region: 'Africa' | 'Asia' | 'Europe' | 'North America' | 'Oceania' | 'South America'
  /** Named only where the first character by itself names it. */
  readonly country: 'United States' | 'Canada' | 'Mexico' | null
}

/**
 * The part of the world where a vehicle's maker is registered, by the first character of its VIN; `null` where no
 * VIN begins so. It need not be where the vehicle was sold.
 *
 * @limits The second character divides further and parts of the table have been reassigned; neither is covered here.
 * @source ISO 3780, regions (read in a public implementation, the standard itself not read); the three countries from
 * memory
 */
export const vinRegion = (vin: string): VinRegion | null => {
  const first = vin[0] ?? ''
  const region = regions.find(([characters]) => first !== '' && characters.includes(first))?.[1]
  return region === undefined ? null : { region, country: countries[first] ?? null }
}

const regions = [
  ['ABCDEFGH', 'Africa'],
  ['JKLMNPR', 'Asia'],
  ['STUVWXYZ', 'Europe'],
  ['12345', 'North America'],
  ['67', 'Oceania'],
  ['890', 'South America'],
] as const

const countries: Readonly<Record<string, VinRegion['country']>> = {
  1: 'United States',
  2: 'Canada',
  3: 'Mexico',
  4: 'United States',
  5: 'United States',
}
