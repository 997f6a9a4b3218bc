import type { Section } from '../content.ts'
import { paragraph } from './blocks.ts'
import type { ReportContext } from './context.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.ownWords

/** What the shop adds in its own words, marked as the shop's; none where it has written nothing. */
export const ownWordsSections = (context: ReportContext): Section[] => {
  const { shop } = context
  const texts = [shop.says?.cautions, shop.says?.reportFooter].filter((text) => text != null)
  if (texts.length === 0) return []
  const paragraphs = texts.flatMap((text) => text.split('\n')).filter((line) => line.trim() !== '')
  return [{ title: says(context).title(shop.name), blocks: paragraphs.map((text) => paragraph(text)) }]
}
