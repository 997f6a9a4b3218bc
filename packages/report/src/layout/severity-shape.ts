import type { Severity } from '../content.ts'
import type { Box, Mark } from './page-elements.ts'
import { filledBox, outlinedBox } from './page-elements.ts'

export type Shape = 'solid-bar' | 'thick-rule' | 'thin-rule' | 'no-rule' | 'dashed-outline' | 'tick'

/** One shape per grade, readable in one ink and at a glance, always next to its word. */
export const shapeOf: Readonly<Record<Severity, Shape>> = {
  'do-not-drive': 'solid-bar',
  'do-not-open-the-tire': 'solid-bar',
  'repair-before-release': 'solid-bar',
  cause: 'thick-rule',
  'also-found': 'thin-rule',
  contradiction: 'thin-rule',
  'for-information': 'no-rule',
  unexplained: 'dashed-outline',
  'not-checked': 'dashed-outline',
  'could-not-be-checked': 'dashed-outline',
  'good-as-measured': 'tick',
}

/** The shape drawn on a box; text inside it begins `shapeInset` from the box's left. */
export const shapeMarks = (severity: Severity, box: Box): Mark[] => {
  switch (shapeOf[severity]) {
    case 'solid-bar':
      return [filledBox(box)]
    case 'thick-rule':
      return [filledBox({ ...box, width: 5 })]
    case 'thin-rule':
      return [filledBox({ ...box, width: 1 })]
    case 'no-rule':
      return []
    case 'dashed-outline':
      return [outlinedBox(box, 0.8, 2.5)]
    case 'tick':
      return [tick(box.x, box.y + 4, 8)]
  }
}

export const shapeInset = 12

/** A tick as a drawn path: no font here has the character. */
export const tick = (x: number, y: number, size: number): Mark => ({
  kind: 'path',
  d: `M ${x} ${y + size * 0.55} L ${x + size * 0.38} ${y + size * 0.92} L ${x + size} ${y + size * 0.08}`,
  fill: null,
  stroke: { width: size * 0.18, dash: null },
})
