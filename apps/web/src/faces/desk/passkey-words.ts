/** Why a browser did nothing with a passkey. It does not say whether there is none or the person closed its question. */
export const passkeyTroubles = {
  unsupported: {
    title: 'This browser has no passkeys',
    detail: 'Use your password, or open the desk in a newer browser.',
  },
  known: {
    title: 'There is a passkey already',
    detail: 'This device holds a passkey of yours for the desk. Use that one.',
  },
  address: {
    title: 'Passkeys do not work at this address',
    detail:
      'A passkey works only under the name under which it was made, over https or on the machine itself. Open the desk there, or use your password.',
  },
  'not-used': {
    title: 'No passkey was used',
    detail:
      'The browser’s question was closed, took too long, or found no passkey for this address. Try once more, or use your password.',
  },
} as const
