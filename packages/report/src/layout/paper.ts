/** US letter, in points (72 to the inch). */
export const paper = { width: 612, height: 792 } as const

/** The area for text; entry numbers are left of the margin rule. */
export const sheet = {
  left: 62,
  right: 580,
  top: 34,
  bottom: 740,
  marginRule: 54,
  footer: 753,
} as const

export const sheetWidth = sheet.right - sheet.left

/** Type sizes in points; nothing that a reader needs is under `body`. */
export const sizes = { answer: 21, title: 13, lead: 11.5, body: 10, small: 8 } as const
