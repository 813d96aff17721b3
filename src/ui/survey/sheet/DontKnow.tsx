/** To be ticked where nobody knows it. */
export function DontKnow() {
  return (
    <span className="dont-know">
      <span className="tick-box" /> don’t know
    </span>
  )
}
