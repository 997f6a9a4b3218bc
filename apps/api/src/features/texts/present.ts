import type { TextsContent } from '@bayledger/contract/texts'
import { readShopHead } from '../../core/shop-head.ts'

/** A stored version as its page edits it; what was written before a text existed has none. */
export const textsIn = (body: unknown): TextsContent => {
  const { lines, telephone, reportFooter, cautions, messages, quietHours, warranty } = readShopHead(body)
  return { lines: [...lines], telephone, reportFooter, cautions, messages, quietHours, warranty }
}

export const presentTexts = (version: number, body: unknown) => ({
  id: 'texts' as const,
  version,
  content: textsIn(body),
  facts: {},
})
