/** What the desk reads of a message that the program failed to make. */
export const notMade = 'The program could not make this message; its log says why. It tries again.'
