/** What a judgment of a tire's tread says, and the names of the rules that it goes by. */
export const treadWords = {
  says: (verdict: 'reject' | 'warning' | 'pass', rule: string, governs: string): string =>
    `${judged[verdict]} ${rule}: ${governs}`,
  governs: {
    model: 'A model for state inspection: the rule of the state where the vehicle is inspected governs.',
    thatState: 'It governs inspections in that state only.',
  },
  names: {
    heavyFront: '49 CFR 570.62(a), front tire of a vehicle over 10,000 lb',
    heavyOther: '49 CFR 570.62(a), other tire of a vehicle over 10,000 lb',
  },
} as const

const judged = {
  reject: 'Two adjacent grooves are under the depth asked for.',
  warning: 'A groove is worn down, though the tire is not to be rejected yet.',
  pass: 'No groove is worn down.',
} as const
