import type { ScreensWording } from '../screens.ts'

export const screens: ScreensWording = {
  failedToShow: {
    title: 'This page failed to show.',
    detail:
      'What was recorded before is kept. Load the page again; if it fails again, tell the shop’s owner.',
  },
  unreachable: {
    title: 'The shop’s server does not answer.',
    detail: 'Check the network, then try again.',
  },
  notOurs: (status) => ({
    title: 'The answer was not from the shop’s server.',
    detail: `Something between here and the server answered with status ${status}. Try again; if it stays, tell the shop’s owner.`,
  }),
  wheelOff: { ring: 'OFF', why: 'not torqued' },
}
