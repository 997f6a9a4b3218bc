/**
 * The zones of the United States and its territories: the seven in which most people live, then the others.
 * Source: zone.tab of the IANA time zone database, codes US, PR, VI, GU, MP and AS; a browser may still give the older name of one.
 */
const ofUnitedStates = [
  ...['America/New_York', 'America/Chicago', 'America/Denver', 'America/Phoenix', 'America/Los_Angeles'],
  ...['America/Anchorage', 'Pacific/Honolulu', 'America/Adak', 'America/Boise', 'America/Detroit'],
  ...[
    'America/Indiana/Indianapolis',
    'America/Indianapolis',
    'America/Indiana/Knox',
    'America/Indiana/Marengo',
  ],
  ...['America/Indiana/Petersburg', 'America/Indiana/Tell_City', 'America/Indiana/Vevay'],
  ...['America/Indiana/Vincennes', 'America/Indiana/Winamac', 'America/Juneau'],
  ...[
    'America/Kentucky/Louisville',
    'America/Louisville',
    'America/Kentucky/Monticello',
    'America/Menominee',
  ],
  ...['America/Metlakatla', 'America/Nome', 'America/North_Dakota/Beulah', 'America/North_Dakota/Center'],
  ...['America/North_Dakota/New_Salem', 'America/Sitka', 'America/Yakutat', 'America/Puerto_Rico'],
  ...['America/St_Thomas', 'Pacific/Guam', 'Pacific/Pago_Pago', 'Pacific/Saipan'],
]

export type TimeZoneOption = { readonly value: string; readonly label: string; readonly group: string }

const spoken = (name: string): string => name.replaceAll('_', ' ')

/** Any day on which the clock of today is kept. */
const summer = new Date('2026-07-01T12:00:00Z')

/** "New York, Eastern Time": the city as the zone names it, and what the clock there is called. */
const cityAndClock = (zone: string): string => {
  const clock = new Intl.DateTimeFormat('en-US', { timeZone: zone, timeZoneName: 'longGeneric' })
    .formatToParts(summer)
    .find(({ type }) => type === 'timeZoneName')?.value
  const city = spoken(zone.replace(/^\w+\//, '').replace('/', ', '))
  return clock === undefined ? city : `${city}, ${clock}`
}

const known: readonly string[] = Intl.supportedValuesOf('timeZone')

/** The zones that a place can be in: those of the United States first, then all others by name. */
export const timeZones: readonly TimeZoneOption[] = [
  ...ofUnitedStates
    .filter((zone) => known.includes(zone))
    .map((value) => ({ value, label: cityAndClock(value), group: 'United States' })),
  ...known
    .filter((zone) => !ofUnitedStates.includes(zone))
    .map((value) => ({ value, label: spoken(value), group: 'Elsewhere' })),
]
