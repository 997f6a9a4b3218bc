/**
 * One thing that happens in the simulated shop. Numbers choose among what is there, so that a list of actions can be
 * replayed with some left out: what an action then finds nothing for does not happen.
 */
export type Action = Happening & {
  /** What is left to chance while it happens: how long a message takes, which server gets it. */
  readonly luck: number
}

export type Happening =
  /** A person does the next thing that their device shows. */
  | { readonly does: 'work'; readonly device: number }
  /** A device reads what an order gained. */
  | { readonly does: 'look'; readonly device: number; readonly order: number }
  /** One of the messages from or to a device arrives, is lost, or arrives and is on its way once more. */
  | {
      readonly does: 'message'
      readonly device: number
      readonly pick: number
      readonly fate: 'arrives' | 'is-lost' | 'arrives-twice'
    }
  /** Something between the device and the service answers in its place. */
  | { readonly does: 'garble'; readonly device: number; readonly pick: number }
  | {
      readonly does: 'statement'
      readonly server: number
      readonly pick: number
      readonly fate: 'answers' | 'breaks-before' | 'breaks-after'
    }
  | { readonly does: 'disk'; readonly device: number; readonly full: boolean }
  | { readonly does: 'wait'; readonly milliseconds: number }
  | { readonly does: 'reach'; readonly device: number; readonly isInReach: boolean }
  | { readonly does: 'reboot'; readonly device: number; readonly survive: number }
  /** A server dies with its memory; of its statements under way the first few are done. It starts again at once. */
  | { readonly does: 'kill'; readonly server: number; readonly done: number }
  | { readonly does: 'end-session'; readonly device: number }
  | { readonly does: 'change-facts' }
  /** Whatever is under way arrives, is written and is answered: what a shorter history says in place of many steps. */
  | { readonly does: 'go-on' }
