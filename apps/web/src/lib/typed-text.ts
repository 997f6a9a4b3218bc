/** What was typed, without blanks around it; nothing typed is `null`, never an empty text. */
export const typedOrNull = (text: string): string | null => (text.trim() === '' ? null : text.trim())
