import type { ToldSeverity } from '@bayledger/ledger/questions/told-findings'
import type { Answer } from '@bayledger/reckoning/estimate'

/** What the page behind a customer's link says beside what the server sends, part by part. Sums are formatted. */
export type CustomerPageWording = {
  /** The name of the page in the browser, and what is read where its script does not run. */
  readonly document: { readonly title: string; readonly needsScript: string }
  readonly opening: string
  /** The address lacks the secret behind its #. */
  readonly notWhole: { readonly title: string; readonly detail: string }
  readonly titles: Readonly<Record<'canDrive' | 'dangerous' | 'light' | 'report', string>>
  /** What opens how, and why, the air is checked more often than each month. */
  readonly how: string
  /** What a sensor is, for whoever never heard of one. */
  readonly sensorIs: string
  /** What opens the photos. */
  readonly photos: (count: number) => string
  /** What is said of the light where no finding is shown. */
  readonly noCause: Readonly<Record<'still-looking' | 'was-off' | 'unexplained', string>>
  readonly technicianDiffers: string
  readonly found: {
    readonly words: Readonly<Record<ToldSeverity, string>>
    /** Short, at the wheel in the drawing. */
    readonly marks: Readonly<Record<ToldSeverity, string>>
    /** A cause that is the sensor's: beside a pressure, "Cause" alone reads as a bad tire. */
    readonly sensorMark: string
  }
  readonly measured: {
    /** What opens the figures and the drawing. */
    readonly title: string
    readonly caption: string
    /** Before what is said of one wheel: its name. */
    readonly at: (name: string) => string
    readonly label: (psi: number | null) => string
    /** A sensor that was tried so often and gave no answer; short, at the wheel in the drawing. */
    readonly silent: (tries: number) => string
    /** A wheel for whoever does not see the drawing: `pressure` with its unit. */
    readonly wheel: (of: {
      readonly name: string
      readonly mark: string | null
      /** `null`: nobody gauged it. */
      readonly pressure: string | null
      readonly labelPsi: number | null
      /** How often its sensor was tried without an answer. */
      readonly silent: number | null
    }) => string
  }
  readonly report: {
    readonly sealed: (number: string, day: string, time: string) => string
    readonly open: string
    /** Words before the link to the page that checks a report, the link, and words after it. */
    readonly check: { readonly before: string; readonly link: string; readonly after: string }
  }
  readonly question: string
  readonly call: (shop: string, telephone: string | null) => string
}

/** The estimate, its questions and the signature under it. */
export type CustomerEstimateWording = {
  readonly title: string
  readonly version: (revision: number) => string
  readonly ready: (time: string) => string
  readonly stillUnsafe: string
  readonly look: string
  readonly total: string
  readonly answers: Readonly<Record<Answer, string>>
  readonly question: {
    /** Of an alternative: what it replaces. */
    readonly insteadOf: (title: string) => string
    /** Against the version before; `sum`: its price there. */
    readonly isNew: string
    readonly changed: (sum: string) => string
    readonly eachPrice: string
    readonly tax: string
    /** Above the answers, behind the title of what is offered. */
    readonly yours: string
    readonly onlyNo: string
    readonly given: string
    readonly notGiven: string
    /** Before a caution about driving, where it must not be driven yet. */
    readonly onceDriven: string
    /** Of the inspection: when it is charged, and how much. */
    readonly lookTerms: Readonly<Record<'charged' | 'waived-with-work' | 'waived', (sum: string) => string>>
  }
  readonly answered: {
    readonly title: string
    readonly recorded: string
    /** What happens next. `ready`: by when, formatted; `owes`: there is something to pay; `mayDrive`: it can be driven away as it is. */
    readonly next: (of: {
      readonly work: 'none' | 'to-begin' | 'begun'
      readonly owes: boolean
      readonly ready: string | null
      readonly mayDrive: boolean
    }) => string
    readonly afterNo: string
    readonly answerDeferred: string
    readonly takeBack: string
    readonly takingBack: string
    readonly keep: string
  }
  readonly sign: {
    readonly title: string
    readonly youAre: string
    readonly relations: Readonly<Record<'owner' | 'named-person' | 'fleet-contact', string>>
    readonly name: string
    readonly signature: string
    readonly before: string
    readonly electronic: { readonly label: string; readonly detail: string }
    readonly parts: string
    readonly send: string
    /** What shows what is new where the page is out of date. */
    readonly loadAgain: string
    /** Why the answer cannot be sent yet. */
    readonly missing: {
      readonly answers: (open: number) => string
      readonly relation: string
      readonly name: string
      readonly signature: string
      /** The signature is typed, and is another name. */
      readonly sameName: string
      readonly agreement: string
    }
  }
}

/** The page on which anybody can have a report checked. */
export type ReportCheckWording = {
  readonly title: string
  readonly what: string
  readonly choose: string
  readonly checking: string
  readonly verdicts: Readonly<Record<'genuine' | 'changed' | 'unknown', string>>
  readonly superseded: (report: string) => string
  /** The keys that the shops seal with: their heading, what they are for, and from when on one was used. */
  readonly keys: string
  readonly keysAre: string
  readonly keySince: (shop: string, day: string) => string
  /** Who confirmed when the file existed: by a time-stamp in the file, or by one that the shop keeps beside it. */
  readonly stamp: (of: {
    readonly where: 'within' | 'beside'
    readonly verdict: 'good' | 'unknown-authority' | 'bad'
    readonly authority: string
    readonly moment: string
  }) => string
  readonly saveStamp: string
}
