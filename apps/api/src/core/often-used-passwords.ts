/** Read when a password is first set: nothing else needs the 49,000 words. */
let known: Promise<ReadonlySet<string>> | null = null

/**
 * The passwords that most people take, as they were leaked over the years, ordered by how many had them.
 *
 * @source `passwords-common` of @zxcvbn-ts/language-common (MIT), which comes with the installed package.
 */
const oftenUsed = (): Promise<ReadonlySet<string>> => {
  known ??= import('@zxcvbn-ts/language-common').then(
    ({ dictionary }) => new Set(dictionary['passwords-common'].map(String)),
  )
  return known
}

/** What somebody tries first at a tire shop's desk: the product, the trade and the roles. docs/security.md lists them too. */
export const ownWords = [
  'bayledger',
  'servicedesk',
  'serviceadvisor',
  'technician',
  'tireshop',
  'tirepressure',
  'pressuresensor',
  'wheelandtire',
  'tiresandwheels',
  'flattire',
] as const

/**
 * Whether a password is one that many people take, or such a one with digits and signs before or after it, or written
 * twice, or made of our own words: what is tried first, whatever its length. Case does not matter.
 */
export const isOftenUsed = async (password: string): Promise<boolean> => {
  const all = await oftenUsed()
  const typed = password.toLowerCase()
  const word = typed.replace(/^[^\p{L}]+|[^\p{L}]+$/gu, '')
  const half = typed.slice(0, typed.length / 2)
  const tried = [typed, word, ...(half + half === typed ? [half] : [])]
  const letters = typed.replaceAll(/[^\p{L}]/gu, '')
  return tried.some((one) => all.has(one)) || ownWords.some((own) => letters === own || letters === own + own)
}
