import type { ProblemsWording, ProblemValues } from '../problems.ts'

const pinUnsuitable: Readonly<Record<ProblemValues['PIN_UNSUITABLE']['why'], string>> = {
  'not-six-digits': 'A PIN has six digits. Choose six and type them again.',
  'one-digit': 'One digit six times is guessed at once. Choose six that nobody can guess.',
  run: 'Digits that count up or down are guessed at once. Choose six that nobody can guess.',
  repeats: 'A pair or three digits repeated are guessed soon. Choose six that nobody can guess.',
  'often-used': 'Many people take this PIN, so it is guessed soon. Choose another.',
  'as-before': 'This is the PIN that was there before. Choose another.',
}

const passwordUnsuitable: Readonly<Record<ProblemValues['PASSWORD_UNSUITABLE']['why'], string>> = {
  short: 'A password has at least 12 characters. A few words with spaces are easy to type.',
  'few-signs': 'The password repeats too few signs. Take at least five different ones.',
  'often-used':
    'Many people take this password, or the word in it, so it is tried first. A few words with spaces that belong together only for you are easy to type.',
  'as-before': 'This is the password that was there before. Choose another.',
}

type PeopleCode =
  | 'PASSWORD_REFUSED'
  | 'FIRST_PAGE_ELSEWHERE'
  | 'SHOP_MADE_BEFORE'
  | 'PIN_UNSUITABLE'
  | 'PASSWORD_UNSUITABLE'
  | 'SIGN_IN_NAME_TAKEN'
  | 'LAST_OWNER'

/** What can go wrong where a shop is made and where its people are kept. */
export const peopleProblems: Pick<ProblemsWording, PeopleCode> = {
  PASSWORD_REFUSED: {
    title: 'What you typed to prove that it is you is wrong',
    detail: () =>
      'Type your present password again. Nothing was changed. After five wrong tries there is a wait.',
  },
  FIRST_PAGE_ELSEWHERE: {
    title: 'A shop is made on the machine that Bayledger runs on',
    detail: ({ address }) =>
      `This page was opened from another machine, or through another program. Open ${address} in a browser on the machine itself. Where it has no screen, run npm run shop:new there. Nothing was made.`,
  },
  SHOP_MADE_BEFORE: {
    title: 'The shop is made already',
    detail: () =>
      'Somebody made the shop before you did; nothing of yours was taken. Sign in with the name and password of its owner.',
  },
  PIN_UNSUITABLE: { title: 'This PIN is not taken', detail: ({ why }) => pinUnsuitable[why] },
  PASSWORD_UNSUITABLE: {
    title: 'This password is not taken',
    detail: ({ why }) => passwordUnsuitable[why],
  },
  SIGN_IN_NAME_TAKEN: {
    title: 'Somebody signs in with this name already',
    detail: () => 'Names stay taken after somebody left. Choose another sign-in name, and save again.',
  },
  LAST_OWNER: {
    title: 'The shop would have no owner',
    detail: () =>
      'This is the only owner. Make somebody else an owner first, then do this. Nothing was changed.',
  },
}
