/**
 * A question about a plain object that is worked out the first time it is asked and kept for as long as the object is.
 * Objects of the core never change, so the answer is always the one it would give again. Whoever asks with an equal but
 * other object has it worked out anew.
 */
export function remembered<Of extends object, Answer>(work: (of: Of) => Answer): (of: Of) => Answer {
  const known = new WeakMap<Of, { readonly answer: Answer }>()
  return (of) => {
    const found = known.get(of)
    if (found !== undefined) return found.answer
    const answer = work(of)
    known.set(of, { answer })
    return answer
  }
}
