import type { Kept } from '../core/record-versions.ts'

/** The body of a record's reply and its version as ETag. `facts`: what the shop knows of it besides what is edited. */
export const recordReply = <Content, Facts>(kept: Kept<Content>, facts: Facts) => ({
  body: { ...kept, facts },
  headers: { etag: `"${kept.version}"` },
})
