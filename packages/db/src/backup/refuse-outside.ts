import { BackupProblem } from './backup-problem.ts'

/** Anyone who has a recipient can encrypt for it: a path is not trusted because it was encrypted. */
export function refuseOutside(path: string): void {
  const isBelow = /^(postgres|signing|certificates|digests|tables|settings)(\/[\w.-]+)+$/.test(path)
  if (isBelow && !/(^|\/)\.\.?(\/|$)/.test(path)) return
  throw new BackupProblem(
    `The backup names a file outside of the data folder (${path}). Nothing was restored.`,
  )
}
