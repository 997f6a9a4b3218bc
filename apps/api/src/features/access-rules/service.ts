import type { AccessRulesContent } from '@bayledger/contract/access-rules'
import { accessRulesKind as kind, readAccessRules } from '../../core/access-rules.ts'
import type { StaffActor } from '../../core/actor.ts'
import { noteSecurityEvent } from '../../core/security-events.ts'
import { listSettingVersions, putSettingIn } from '../../core/setting-versions.ts'
import type { Deps } from '../../deps.ts'
import { presentAccessRules } from './present.ts'

/** The rules that hold, and who wrote which version, newest first. */
export const getAccessRules = async ({ prisma, shopId }: Deps) => {
  const history = await listSettingVersions(prisma, shopId, kind)
  const [newest] = history
  return {
    record: presentAccessRules(newest?.version ?? 0, newest?.content),
    history: history.map((version) => ({ ...version, content: { ...readAccessRules(version.content) } })),
  }
}

/** Writes the next version over the one that was read. @throws VERSION_STALE with both */
export const putAccessRules = (deps: Deps, actor: StaffActor, version: number, content: AccessRulesContent) =>
  deps.prisma.$transaction(async (tx) => {
    const saved = await putSettingIn(tx, deps, actor, { kind, version, content }, presentAccessRules)
    const event = { kind: 'access-rules-changed', staffId: actor.staffId, details: { ...content } } as const
    await noteSecurityEvent(deps, tx, event)
    return presentAccessRules(saved, content)
  })
