/** Why a figure cannot be verified yet. */
export const verifyFaults = {
  nobody: 'Choose who read it at its source.',
  noPin: 'Type the six digits of their PIN.',
} as const
