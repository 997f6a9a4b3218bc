import type { ReportOwnWordsWording } from '../../report/own-words.ts'

export const reportOwnWords: ReportOwnWordsWording = { title: (shop) => `${shop} agrega` }
