import type { DoubtsWording } from '../doubts.ts'

export const doubts: DoubtsWording = {
  order: {
    'chain-broken': (seq) =>
      `Entry ${seq} of this order does not match its seal: it was changed, removed or added outside the program. The order can be read up to the entry before it, and nothing can be added or sealed. Tell the owner; npm run -s ledger:verify says more.`,
    'newer-than-this-program': (seq) =>
      `Entry ${seq} of this order was written by a newer version of the program. The order can be read up to the entry before it. Update the server to go on.`,
  },
  tooNew:
    'This was written by a newer version than the server runs. It stays here until the server is updated.',
}
