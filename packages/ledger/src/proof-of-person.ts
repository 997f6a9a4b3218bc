/** Digits of a PIN. */
export const pinDigits = 6

/** Signs of a password at least. OWASP ASVS 5.0, V6.2.1: 8 at least, 15 advised. */
export const passwordSigns = 12

export type PinFault = 'not-six-digits' | 'one-digit' | 'run' | 'repeats' | 'often-used'
export type PasswordFault = 'short' | 'few-signs' | 'often-used'

/**
 * Shapes on a keypad and dates that people take for a PIN again and again (from memory of published lists of PINs that
 * were leaked, among them Markert and others, IEEE Symposium on Security and Privacy 2020).
 */
const oftenUsed = new Set([
  '112233',
  '332211',
  '159753',
  '159357',
  '147258',
  '258369',
  '147852',
  '789456',
  '123789',
  '123654',
  '520131',
  '696969',
  '007007',
])

/**
 * Why nobody may take this PIN; `null`: they may. One digit throughout, a run up or down, and a half or a third that
 * repeats are guessed first (common practice, the list as said there).
 */
export const pinFault = (pin: string): PinFault | null => {
  if (!/^\d{6}$/.test(pin)) return 'not-six-digits'
  if (/^(\d)\1{5}$/.test(pin)) return 'one-digit'
  const up = [...pin].every((digit, index) => Number(digit) === (Number(pin[0]) + index) % 10)
  const down = [...pin].every((digit, index) => Number(digit) === (Number(pin[0]) + 10 - index) % 10)
  if (up || down) return 'run'
  if (/^(\d{3})\1$/.test(pin) || /^(\d{2})\1\1$/.test(pin)) return 'repeats'
  return oftenUsed.has(pin) ? 'often-used' : null
}

/**
 * Why nobody may take this password; `null`: they may. Any signs are taken, as they are typed (OWASP ASVS 5.0, V6.2.5
 * and V6.2.8).
 */
export const passwordFault = (password: string): PasswordFault | null => {
  if ([...password].length < passwordSigns) return 'short'
  return new Set(password.toLowerCase()).size < 5 ? 'few-signs' : null
}
