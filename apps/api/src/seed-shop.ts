import { photoPieceBytes, photoPieceCount } from '@bayledger/contract/photos'
import type { PrismaClient } from '@bayledger/db/client'
import { agreementOf, secondPersonIn } from '@bayledger/ledger/agreement'
import type { Draft } from '@bayledger/ledger/entry'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import { v7 as newId } from 'uuid'
import { seedDemo } from '../../../prisma/seeds/demo.ts'
import type { DemoShop } from '../../../prisma/seeds/demo-shop.ts'
import { newToken, tokenDigest } from './core/tokens.ts'
import { type Deps, forShop, type Parts } from './deps.ts'
import { appendDraft } from './features/entries/service/append-draft.ts'
import { linkMs } from './features/links/policy.ts'
import { insertLink } from './features/links/store.ts'
import { putPhotoPiece } from './features/photos/service.ts'
import { sealOrderReport } from './features/reports/service.ts'
import { hashPassword } from './features/sessions/service/hash-password.ts'
import { agreementMinutes } from './features/staff/policy.ts'
import { insertProof } from './features/staff/store.ts'

/** Loads the demo the way a day of work would have: every entry through the ledger, every report sealed. */
export const loadDemo = (parts: Parts, shopId: string): Promise<DemoShop> => {
  const at = (instant: string): Deps => forShop({ ...parts, clock: { now: () => new Date(instant) } }, shopId)
  return seedDemo({
    prisma: parts.prisma,
    now: parts.clock.now().toISOString(),
    hashPassword,

    appendEntry: async ({ draft, sides, given, receivedAt }) => {
      await proveForDemo(at(receivedAt), draft)
      const named = new Map(sidesNamedIn(draft).map(({ side, digest }) => [digest, side]))
      const kept = sides.map(({ digest, salt, text }) => ({
        side: named.get(digest) ?? 'personal',
        digest,
        salt: Buffer.from(salt, 'base64'),
        text,
      }))
      const appended = await appendDraft(at(receivedAt), draft, {
        sides: kept,
        given,
        plansAfterDecision: false,
      })
      if (!appended.admitted)
        throw new Error(`${draft.kind} is refused (${appended.code}): ${JSON.stringify(appended.values)}`)
    },
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
  })
}

/** The setting that is written last: without it, a first start was broken off in the middle. */
const loadedKind = 'demo-loaded'

export const noteLoaded = async ({ prisma, shopId, clock }: Deps): Promise<void> => {
  await prisma.settingVersion.create({
    data: {
      shopId,
      id: newId(),
      kind: loadedKind,
      version: 1,
      body: {},
      createdBy: { kind: 'system' },
      createdAt: clock.now(),
    },
  })
}

export const isLoadedToTheEnd = async (prisma: PrismaClient, shopId: string): Promise<boolean> =>
  (await prisma.settingVersion.count({ where: { shopId, kind: loadedKind } })) > 0

/** What a second person's PIN would have left behind, had they typed it on the demo day. */
const proveForDemo = async (deps: Deps, draft: Draft): Promise<void> => {
  const agreesTo = agreementOf(draft)
  const person = secondPersonIn(draft)
  if (!agreesTo || person?.proof?.how !== 'pin') return
  const now = deps.clock.now()
  await insertProof(deps, {
    tokenHash: tokenDigest(person.proof.token),
    staffId: person.staffId,
    agreesTo,
    now,
    expiresAt: new Date(now.getTime() + agreementMinutes * 60_000),
  })
}
