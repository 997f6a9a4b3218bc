/** What the first page says of what was typed, or is missing. A person reads it at once, and nothing stores it. */
export const firstShopFaults = {
  shopName: 'What is the shop called?',
  placeName: 'What is the place called?',
  timeZone: 'Which time zone is the place in?',
  altitude: 'How high is the place? Type whole feet from -1500 to 20000.',
  halfHours: 'Type both times of a day, or leave both empty where it is closed.',
  hoursTurned: 'A day closes after it opens. Correct its times.',
  labor: 'What does an hour of labor cost? Type dollars, with at most two decimals.',
  tax: 'How much is the sales tax? Type percent from 0 to 50, with at most three decimals.',
  ownerName: 'Who owns the shop?',
  signInName: 'The sign-in name has 2 to 31 small letters, digits, dots and hyphens, a letter first.',
  passwordAgain: 'The two passwords differ. Type both again.',
  pinAgain: 'The two PINs differ. Type both again.',
} as const
