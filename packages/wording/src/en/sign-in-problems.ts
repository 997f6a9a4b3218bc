import type { ProblemsWording } from '../problems.ts'

export const leftTheShop =
  'You are not among the people of this shop any more. What you recorded is kept under your name. If this is a mistake, ask an owner.'

export const signInRefused = {
  wrong: 'Check both and try again. After five wrong tries there is a wait.',
  left: leftTheShop,
  'first-over':
    'This first password was good for seven days. An owner gives another one; an owner sets their own with the printed code, or by npm run owner:recover on the machine.',
  'passkey-needed':
    'Name and password are right. This shop asks everybody for a second step, and yours is a passkey: sign in with it. If its device is lost, an owner removes it from your page; an owner sets a new password with the printed code.',
} as const

/** Apart from the other problems: a tablet that checks a PIN by itself loads these only. */
export const signInProblems: Pick<ProblemsWording, 'PIN_REFUSED' | 'SIGN_IN_BLOCKED' | 'SIGN_IN_UNFINISHED'> =
  {
    PIN_REFUSED: {
      title: 'The PIN is wrong',
      detail: ({ why }) =>
        why === 'left' ? leftTheShop : 'Type the six digits again. After five wrong tries there is a wait.',
    },
    SIGN_IN_BLOCKED: {
      title: 'Too many wrong tries',
      detail: ({ seconds }) =>
        `Wait ${seconds} seconds, then try again. The browser or tablet where you signed in last has tries of its own.`,
    },
    SIGN_IN_UNFINISHED: {
      title: 'Your sign-in is not finished',
      detail: ({ awaits }) =>
        awaits === 'password'
          ? 'Choose your own password first: the one that you typed was given to you. Sign in again, and the page asks for it.'
          : 'Turn on a second step first: a code of an authenticator app, or a passkey. Sign in again, and the page asks for it.',
    },
  }
