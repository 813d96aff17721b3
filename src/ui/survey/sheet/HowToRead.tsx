/** How the sheet is filled in, once, at its top. */
export function HowToRead() {
  return (
    <p className="how-to-read">
      The numbers are those beside the fields on the screen. <strong>±</strong> is how far your reading may be
      off. Tick <strong>don’t know</strong> rather than guess. <strong>Along a wall</strong> is from its left
      end as you stand inside; write <strong>R</strong> before it where you measured from the right end.{' '}
      <strong>Heights</strong>: <strong>+</strong> above the line, <strong>−</strong> below it,{' '}
      <strong>F</strong> from the floor.
    </p>
  )
}
