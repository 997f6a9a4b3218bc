/** The same words with a capital, to begin a line or a sentence. */
export const capitalized = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

export const uncapitalized = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)
