/** Who may decide for a vehicle, as the desk offers it. */
export const whoDecides = [
  { value: 'owner', label: 'The owner' },
  { value: 'named-person', label: 'A person the owner named' },
  { value: 'fleet-contact', label: 'A fleet contact' },
] as const
