/** Who may decide for a vehicle, as the desk offers it. */
export const whoDecides = [
  { value: 'owner', label: 'The owner' },
  { value: 'named-person', label: 'A person the owner named' },
  { value: 'fleet-contact', label: 'A fleet contact' },
] as const

/** Who gave a consent: the name, and as what where it was not the owner. */
export const gaveWords = (
  relation: 'owner' | 'named-person' | 'fleet-contact' | 'driver',
  name: string,
): string => (relation === 'owner' ? name : `${name}, ${as[relation]}`)

const as = {
  'named-person': 'whom the owner named',
  'fleet-contact': 'a fleet contact',
  driver: 'the driver',
} as const
