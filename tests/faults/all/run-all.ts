import { kindsAnywhere, kindsOnADisk } from './every-kind.ts'
import { isClean } from './judge.ts'
import { cutPower } from './kinds/power-cut.ts'
import { runKinds } from './run-kinds.ts'
import { makeShopFolder, removeFolder } from './shop-folder.ts'

/**
 * `npm run faults -- --all`: every kind of fault. Before the power cuts it shows that they can fail: without flushing, something
 * must be lost. Gives the exit status; the last line counts.
 */
export const runAll = async (
  options: { readonly rounds: number | null; readonly seed: number; readonly only: string | null },
  say: (line: string) => void,
): Promise<number> => {
  const every = [...kindsAnywhere, ...kindsOnADisk]
  const kinds = options.only === null ? every : every.filter(({ name }) => name === options.only)
  if (kinds.length === 0) {
    say(`--kind "${options.only}" is none of: ${every.map(({ name }) => name).join(', ')}`)
    return 2
  }
  say('Making a shop with orders …')
  const from = await makeShopFolder()
  try {
    if (kinds.some(({ name }) => name === 'power cut')) {
      const { judged } = await cutPower(from, 50, { fsync: 'off', synchronous_commit: 'off' })
      if (judged.lost === 0) {
        say(
          `A power cut without flushing lost none of ${judged.acknowledged}: this test of power cuts shows nothing.`,
        )
        return 1
      }
      say(
        `control: a power cut without flushing loses ${judged.lost} of ${judged.acknowledged}, as it should`,
      )
    }
    const judged = await runKinds(kinds, from, options, say)
    say(
      `acknowledged ${judged.acknowledged}, wrong answers ${judged.wrongAnswers}, messages lost ${judged.messagesLost}, messages doubled ${judged.messagesDoubled}`,
    )
    say(`lost ${judged.lost}, twice ${judged.twice}, broken ${judged.broken}`)
    return isClean(judged) ? 0 : 1
  } finally {
    removeFolder(from.path)
  }
}
