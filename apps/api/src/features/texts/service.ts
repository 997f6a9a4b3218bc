import type { TextsContent } from '@bayledger/contract/texts'
import type { StaffActor } from '../../core/actor.ts'
import { listSettingVersions, putSetting } from '../../core/setting-versions.ts'
import type { Deps } from '../../deps.ts'
import { textsKind as kind } from './policy.ts'
import { presentTexts, textsIn } from './present.ts'

/** The texts and who wrote which version, newest first. */
export const getTexts = async (deps: Deps) => {
  const history = await listSettingVersions(deps.prisma, deps.shopId, kind)
  const [newest] = history
  return {
    record: presentTexts(newest?.version ?? 0, newest?.content),
    history: history.map((version) => ({ ...version, content: { ...textsIn(version.content) } })),
  }
}

/** Writes the next version over the one that was read. @throws VERSION_STALE with both */
export const putTexts = async (deps: Deps, actor: StaffActor, version: number, content: TextsContent) =>
  presentTexts(await putSetting(deps, actor, { kind, version, content }, presentTexts), content)
