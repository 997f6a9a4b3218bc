/** Every text of a language by the path of its code: `verdicts.drive.do-not-drive`. What is made by a function is left out. */
export const saidByCode = (said: object, path = ''): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(said).flatMap(([code, words]: [string, unknown]): [string, string][] => {
      const here = path === '' ? code : `${path}.${code}`
      if (typeof words === 'string') return [[here, words]]
      return typeof words === 'object' && words !== null ? Object.entries(saidByCode(words, here)) : []
    }),
  )
