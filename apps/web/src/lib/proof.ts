/** Asks whoever sits here to prove that it is them; gives whether they did. */
type Ask = () => Promise<boolean>

let ask: Ask = async () => false

/** Says how this face asks. */
export const askForProofBy = (how: Ask): void => {
  ask = how
}

export const askForProof = (): Promise<boolean> => ask()
