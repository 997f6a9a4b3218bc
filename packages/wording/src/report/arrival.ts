import type { TableWording } from './table.ts'

export type LampCheck = 'lights' | 'dark' | null

/** What the light did as somebody saw it; `behavior` in words, `null` where nobody looked. */
export type LightSeen = { readonly lampCheck: LampCheck; readonly behavior: string | null }

export type ReportArrivalWording = {
  readonly title: string
  readonly noComplaint: string
  readonly told: (words: string) => string
  readonly lightTold: (does: string | null) => string
  /** `wheel` by name. */
  readonly event: (of: {
    readonly event: string
    readonly wheel: string | null
    readonly daysAgo: number | null
  }) => string
  readonly events: (events: readonly string[]) => string
  readonly light: (seen: (LightSeen & { readonly by: string; readonly moment: string }) | null) => string
  /** Temperatures are figures with their unit. */
  readonly around: (
    of: {
      readonly outdoor: string
      readonly tires: string
      readonly tire: string | null
      readonly altitude: string
    } | null,
  ) => string
  readonly damage: TableWording<'wheel' | 'tread' | 'stem' | 'tire' | 'fasteners'>
  readonly prints: TableWording<'wheel' | 'size' | 'bySheet' | 'dateCode' | 'age'>
  readonly unread: (why: string) => string
  readonly years: (count: number) => string
  readonly damages: (damages: readonly string[]) => string
}
