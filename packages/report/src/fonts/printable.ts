/**
 * Text as it can be printed: composed form (NFC), line breaks and other controls as spaces, invisible
 * format characters (which can turn the reading order around) dropped, broken surrogates and noncharacters as
 * U+FFFD.
 */
export const printable = (text: string): string =>
  text
    .toWellFormed()
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\u00A0\u202F]/gu, ' ')
    .replace(/\p{Cf}/gu, '')
    .replace(/\p{Noncharacter_Code_Point}/gu, '\uFFFD')
