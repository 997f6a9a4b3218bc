import { photoPieceBytes, photoPieceCount } from '@bayledger/contract/photos'
import { agreementOf, secondPersonIn } from '@bayledger/ledger/agreement'
import type { Draft } from '@bayledger/ledger/entry'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import { v7 as newId } from 'uuid'
import type { DemoLine } from '../../../prisma/seeds/demo/order-pen.ts'
import { type DemoSeeding, finishDemo, seedDemo } from '../../../prisma/seeds/demo.ts'
import type { DemoShop } from '../../../prisma/seeds/demo-shop.ts'
import { newToken, tokenDigest } from './core/tokens.ts'
import { type Deps, forShop, type Parts } from './deps.ts'
import { type Appended, type AppendOptions, appendTogether } from './features/entries/service/append-draft.ts'
import { linkMs } from './features/links/policy.ts'
import { insertLink } from './features/links/store.ts'
import { putPhotoPiece } from './features/photos/service.ts'
import { sealOrderReport } from './features/reports/service.ts'
import { hashPassword } from './features/sessions/service/hash-password.ts'
import { agreementMinutes } from './features/staff/policy.ts'
import { insertProof } from './features/staff/store.ts'

/** Loads the shop and what is in the works, which is what a floor shows, the way a day of work would have: every entry through the ledger. */
export const beginDemo = (parts: Parts, shopId: string, demo: DemoShop): Promise<void> =>
  seedDemo(seedingOf(parts, shopId, demo))

/** Loads the orders that have ended, every report sealed, and what came back after them; says of each when it is whole. */
export const endDemo = (
  parts: Parts,
  shopId: string,
  demo: DemoShop,
  isWhole: (orderId: string) => void,
): Promise<void> => finishDemo(seedingOf(parts, shopId, demo), isWhole)

const seedingOf = (parts: Parts, shopId: string, demo: DemoShop): DemoSeeding => {
  const at = momentsOf(parts, shopId)
  return {
    prisma: parts.prisma,
    demo,
    hashPassword,

    appendEntries: (lines) => appendLines(at, lines),
    issueLink: (orderId, { linkId, sentBy, sentAt }) =>
      insertLink(at(sentAt), {
        id: linkId,
        orderId,
        tokenHash: tokenDigest(newToken()),
        createdAt: new Date(sentAt),
        expiresAt: new Date(Date.parse(sentAt) + linkMs),
        staffId: sentBy,
      }),
    sendPhoto: async ({ digest, bytes }, sentAt) => {
      for (let number = 0; number < photoPieceCount(bytes.length); number += 1) {
        const from = number * photoPieceBytes
        await putPhotoPiece(at(sentAt), digest, {
          number,
          bytes: bytes.subarray(from, from + photoPieceBytes),
        })
      }
    },
    sealReport: async ({ orderId, sealedBy, sealedAt }) => {
      await sealOrderReport(at(sealedAt), { orderId, entryId: newId(), staffId: sealedBy })
    },
    progress: () => undefined,
  }
}

/** The parts of the process as they were at an instant. */
export const momentsOf =
  (parts: Parts, shopId: string) =>
  (instant: string): Deps =>
    forShop({ ...parts, clock: { now: () => new Date(instant) } }, shopId)

/** Appends the lines of one order, in order, as many together as may go into one statement. */
export const appendLines = async (
  at: (instant: string) => Deps,
  lines: readonly DemoLine[],
): Promise<void> => {
  for (const together of groupsOf(lines)) {
    for (const { draft, receivedAt } of together) await proveForDemo(at(receivedAt), draft)
    const appended = await appendTogether(
      together.map((line) => ({ deps: at(line.receivedAt), draft: line.draft, options: optionsOf(line) })),
    )
    for (const [index, { draft }] of together.entries()) {
      const outcome = appended[index]
      if (outcome) mustBeAdmitted(draft, outcome)
    }
  }
}

/** An opening goes alone, findings rest on exactly what is before them, and an estimate may name sums of an earlier one. */
const groupsOf = (lines: readonly DemoLine[]): DemoLine[][] => {
  const groups: DemoLine[][] = []
  let isOpen = false
  for (const line of lines) {
    const { kind } = line.draft
    const isAlone = kind === 'order.opened' || kind === 'diagnosis.issued'
    const last = groups.at(-1)
    if (last && isOpen && !isAlone && kind !== 'estimate.issued') last.push(line)
    else groups.push([line])
    isOpen = !isAlone
  }
  return groups
}

/** What an entry of a ledger that is loaded whole is appended with: its plan comes as an entry of its own. */
const optionsOf = ({ draft, sides, given }: DemoLine): AppendOptions => {
  const named = new Map(sidesNamedIn(draft).map(({ side, digest }) => [digest, side]))
  return {
    sides: sides.map(({ digest, salt, text }) => ({
      side: named.get(digest) ?? 'personal',
      digest,
      salt: Buffer.from(salt, 'base64'),
      text,
    })),
    given,
    plansAfterDecision: false,
  }
}

const mustBeAdmitted = (draft: Draft, appended: Appended): void => {
  if (!appended.admitted)
    throw new Error(`${draft.kind} is refused (${appended.code}): ${JSON.stringify(appended.values)}`)
}

/** What a second person's PIN would have left behind, had they typed it on the demo day. */
const proveForDemo = async (deps: Deps, draft: Draft): Promise<void> => {
  const agreesTo = agreementOf(draft)
  const person = secondPersonIn(draft)
  if (!agreesTo || person?.proof?.how !== 'pin') return
  const now = deps.clock.now()
  const tokenHash = tokenDigest(person.proof.token)
  // A load that was broken off may have left it.
  if (await deps.prisma.secondPersonProof.findFirst({ where: { shopId: deps.shopId, tokenHash } })) return
  await insertProof(deps, {
    tokenHash,
    staffId: person.staffId,
    agreesTo,
    now,
    expiresAt: new Date(now.getTime() + agreementMinutes * 60_000),
  })
}
