/** What the controls of a screen say by themselves: no word of the trade is among them. */
export type ControlsWording = {
  readonly problem: {
    readonly tryAgain: string
    /** A field that is wrong, behind its name: what was found there, and what is allowed. */
    readonly field: (found: string, allowed: string) => string
    /** Before the id by which the server's own record of a problem is found. */
    readonly reference: string
  }
  readonly signature: {
    readonly typed: (label: string) => string
    readonly type: string
    readonly draw: string
    readonly clear: string
  }
}
