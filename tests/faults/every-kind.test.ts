import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { kindsAnywhere } from './all/every-kind.ts'
import { isClean, nothingJudged } from './all/judge.ts'
import { runKinds } from './all/run-kinds.ts'
import { makeShopFolder, removeFolder, type ShopFolder } from './all/shop-folder.ts'

/**
 * One round of each kind that needs no disk of its own and has no test elsewhere (`kill.test.ts`, `tests/api/messages.test.ts`);
 * `npm run faults -- --all` runs hundreds, and all of them.
 */
const kinds = kindsAnywhere.filter(({ name }) => !['server killed', 'mail server down'].includes(name))

let from: ShopFolder
beforeAll(async () => {
  from = await makeShopFolder()
})
afterAll(() => removeFolder(from.path))

describe('a shop to which something is done while people write', () => {
  it.each(kinds.map((kind) => [kind.name, kind] as const))(
    'keeps what it acknowledged, once, and says 503 where it cannot work: %s',
    async (_name, kind) => {
      const said: string[] = []
      const judged = await runKinds([kind], from, { rounds: 1, seed: 3 }, (line) => said.push(line))
      expect(isClean(judged), said.join('\n')).toBe(true)
      expect(judged.acknowledged).toBeGreaterThan(2)
    },
  )
})

describe('the count', () => {
  it('fails for each thing that is not 0', () => {
    expect(isClean(nothingJudged)).toBe(true)
    for (const fault of ['lost', 'twice', 'broken', 'wrongAnswers', 'messagesLost', 'messagesDoubled'])
      expect(isClean({ ...nothingJudged, [fault]: 1 }), fault).toBe(false)
  })
})
