import type { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'
import type { CustomerCautionVersions } from '@bayledger/reckoning/cautions/customer-cautions'

/**
 * The customer cautions in one language: the words of every version that was ever issued, because an answer names the
 * version that was shown. A version that lacks its words does not compile.
 */
export type CustomerCautionsWording = {
  readonly [Name in keyof CustomerCautionVersions]: Readonly<
    Record<CustomerCautionVersions[Name][number], string>
  >
}

/** The words of a caution as they were in a version; `null` for one that was never issued. */
export const cautionWords = (
  words: CustomerCautionsWording,
  { number, version }: CautionReference,
): string | null => {
  const versions = Object.hasOwn(words, number)
    ? (words[number as keyof CustomerCautionsWording] as Readonly<Record<number, string>>)
    : {}
  return versions[version] ?? null
}

/** The short name of a caution, where there is no room for its words: "CT-01 v1". */
export const cautionName = ({ number, version }: CautionReference): string => `${number} v${version}`
